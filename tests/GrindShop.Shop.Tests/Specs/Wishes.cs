using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Specs;

/// <summary>Specifications to start from, for the engine families of the demo.</summary>
internal static class Wishes
{
    public static EngineFamily MainFamily => Family("RV8-R");

    /// <summary>An everyday hydraulic roller grind; only what a customer must say.</summary>
    public static CamSpec Street { get; } = new()
    {
        EngineFamily = "RV8-R",
        Lifter = LifterType.HydraulicRoller,
        Intake = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 222 },
    };

    public static EngineFamily Family(string code) => SeedFiles.Scenario.Families.Single(family => family.Code == code);

    public static CompletedSpec Completed(CamSpec spec) => SpecCompletion.Complete(spec, SeedFiles.Scenario.Families.SingleOrDefault(family => family.Code == spec.EngineFamily));

    public static GrindSpec Grind(CamSpec spec) => Completed(spec).Grind ?? throw new InvalidOperationException(string.Join(' ', Completed(spec).Problems));
}
