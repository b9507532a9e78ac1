using CsCheck;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Specs;

public class SpecPropertyTests
{
    [Fact]
    public void Completion_answers_any_specification_with_a_grind_or_with_what_is_wrong_or_missing() => RandomSpecs.Any.Sample(
        spec =>
        {
            var completed = Wishes.Completed(spec);
            Assert.Equal(completed.Grind is null, completed.Problems.Count + completed.Needed.Count > 0);
        },
        iter: 3000);

    [Fact]
    public void Completed_grind_lies_in_every_range() => RandomSpecs.Likely.Sample(
        spec =>
        {
            if (Wishes.Completed(spec).Grind is { } grind)
                Assert.Empty(SpecCheck.Problems(RandomSpecs.SpelledOut(grind), Wishes.Family(grind.EngineFamily)));
        },
        iter: 6000);

    [Fact]
    public void Complete_specification_comes_through_unchanged() => RandomSpecs.Likely.Sample(
        spec =>
        {
            if (Wishes.Completed(spec).Grind is not { } grind)
                return;
            var again = Wishes.Completed(RandomSpecs.SpelledOut(grind));
            Assert.Equal(grind, again.Grind);
            Assert.Empty(again.Filled);
        },
        iter: 6000);
}

internal static class RandomSpecs
{
    private static readonly string?[] Families = [null, "XX9-Z", .. SeedFiles.Scenario.Families.Select(family => family.Code)];
    private static readonly string?[] Orders = [null, null, null, "", "1-2", "1-8-4-3-6-5-7-7", .. SeedFiles.Scenario.Families.Select(family => family.FiringOrder)];

    /// <summary>Blanks, extremes, NaN and infinities among usual values.</summary>
    public static readonly Gen<CamSpec> Any = Numbers(Words, field => Gen.Frequency(
        (6, Gen.Const((double?)null)),
        (6, Gen.Double[field.Range.Least, field.Range.Most].Select(value => (double?)value)),
        (1, Gen.OneOf<double?>(field.Range.Least, field.Range.Most, 0, -1, double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.Epsilon, double.MaxValue))));

    /// <summary>Known family and lifter, numbers in range or blank: mostly complete.</summary>
    public static readonly Gen<CamSpec> Likely =
        from spec in Numbers(Gen.Const(Wishes.Street), field => Gen.Frequency(
            (4, Gen.Const((double?)null)),
            (1, Gen.Double[field.Range.Least, field.Range.Most].Select(value => (double?)value))))
        from family in Gen.OneOf(SeedFiles.Scenario.Families.ToArray())
        from lifter in Gen.Enum<LifterType>()
        from lift in Gen.Double[.100, .600]
        from at050 in Gen.Double[150, 320]
        from gear in Gen.OneOf<DistributorGear?>(null, DistributorGear.Iron, DistributorGear.Bronze)
        select spec with
        {
            EngineFamily = family.Code,
            Side = family.HasSides ? CamSide.Right : null,
            Lifter = lifter,
            Intake = spec.Intake with { LobeLiftIn = lift, ValveLiftIn = null, DurationAt050CrankDeg = at050, LashIn = lifter.IsSolid() ? spec.Intake.LashIn : null },
            Exhaust = spec.Exhaust with { LashIn = lifter.IsSolid() ? spec.Exhaust.LashIn : null },
            DistributorGear = family.Gear == GearPosition.None ? null : gear,
        };

    /// <summary>The specification that says everything a grind says.</summary>
    public static CamSpec SpelledOut(GrindSpec grind) => new()
    {
        EngineFamily = grind.EngineFamily,
        Side = grind.Side,
        Lifter = grind.Lifter,
        FollowerDiameterIn = grind.FollowerDiameterIn,
        Intake = Lobe(grind.Intake, grind.IntakeLashIn),
        Exhaust = Lobe(grind.Exhaust, grind.ExhaustLashIn),
        RockerRatio = grind.RockerRatio,
        LobeSeparationCamDeg = grind.LobeSeparationCamDeg,
        IntakeCenterlineCrankDeg = grind.IntakeCenterlineCrankDeg,
        DistributorGear = grind.DistributorGear,
        MaxBaseCircleDiameterIn = grind.MaxBaseCircleDiameterIn,
        FiringOrder = grind.FiringOrder,
    };

    private static Gen<CamSpec> Words =>
        from family in Gen.OneOf(Families)
        from side in Gen.OneOf<CamSide?>(null, CamSide.Left, CamSide.Right)
        from lifter in Gen.OneOf<LifterType?>(null, LifterType.HydraulicRoller, LifterType.SolidRoller, LifterType.HydraulicFlat, LifterType.SolidFlat)
        from order in Gen.OneOf(Orders)
        from notes in Gen.String
        select new CamSpec { EngineFamily = family, Side = side, Lifter = lifter, FiringOrder = order, Notes = notes };

    private static Gen<CamSpec> Numbers(Gen<CamSpec> start, Func<NumberField, Gen<double?>> number) => NumberField.All.Aggregate(
        start,
        (specs, field) => from spec in specs from value in number(field) select field.With(spec, value));

    private static LobeWish Lobe(Lobes.LobeSpec lobe, double lash) => new()
    {
        LobeLiftIn = lobe.LobeLiftIn,
        DurationAt050CrankDeg = lobe.DurationAt050CrankDeg,
        AdvertisedDurationCrankDeg = lobe.AdvertisedDurationCrankDeg,
        AdvertisedAtIn = lobe.AdvertisedAtIn,
        LashIn = lash,
    };
}
