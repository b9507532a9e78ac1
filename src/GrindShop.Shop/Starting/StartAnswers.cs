using System.Globalization;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Starting;

public enum StartUse
{
    Street,
    Tow,
    StreetStrip,
    Strip,
    CircleTrack,
    Marine,
}

public enum IdleWish
{
    Smooth,
    Noticeable,
    Rough,
}

public static class StartWords
{
    public static string Words(this StartUse use) => use switch
    {
        StartUse.Street => "everyday street",
        StartUse.Tow => "towing and hauling",
        StartUse.StreetStrip => "street and drag strip",
        StartUse.Strip => "drag strip only",
        StartUse.CircleTrack => "circle track",
        _ => "boat",
    };

    public static string Words(this IdleWish idle) => idle switch
    {
        IdleWish.Smooth => "smooth",
        IdleWish.Noticeable => "noticeable",
        _ => "rough",
    };
}

/// <summary>What somebody who knows the engine and not the cam can tell: enough for a starting specification.</summary>
/// <param name="CubicInches">Displacement of the whole engine.</param>
/// <param name="FromRpm">Crank speed from which it should pull.</param>
/// <param name="ToRpm">Highest crank speed at which it should pull.</param>
public sealed record StartAnswers(EngineFamily Family, LifterType Lifter, StartUse Use, double CubicInches, double FromRpm, double ToRpm, IdleWish Idle)
{
    public const double CubicInchesPerLitre = 61.0237;

    /// <summary>Displacement of one cylinder, cubic inches.</summary>
    public static readonly FieldRange Cylinder = new("Displacement of one cylinder", 8, 130, "cubic inches");
    public static readonly FieldRange From = new("Lowest speed", 500, 8000, "rpm");
    public static readonly FieldRange To = new("Highest speed", 2500, 11000, "rpm");

    /// <summary>The engine pulls over at least this much, rpm.</summary>
    public const double LeastSpanRpm = 1000;

    public double CubicInchesEach => CubicInches / Family.Cylinders;

    /// <summary>The answers in one line, for the shop.</summary>
    public string Sentence => string.Create(CultureInfo.InvariantCulture,
        $"{Use.Words()}, {CubicInches:0.#} cubic inches, {FromRpm:0} to {ToRpm:0} rpm, {Idle.Words()} idle");

    /// <summary>What is wrong with figures that were given; the paths are those of the guided form.</summary>
    public static IReadOnlyList<FieldProblem> Problems(EngineFamily? family, double? cubicInches, double? fromRpm, double? toRpm)
    {
        FieldProblem?[] found =
        [
            Displacement(family, cubicInches),
            From.Check(fromRpm, "start.from"),
            To.Check(toRpm, "start.to"),
            toRpm - fromRpm < LeastSpanRpm ? new FieldProblem("start.to", FormattableString.Invariant($"The highest speed must lie at least {LeastSpanRpm:0} rpm above the lowest.")) : null,
        ];
        return [.. found.OfType<FieldProblem>()];
    }

    private static FieldProblem? Displacement(EngineFamily? family, double? cubicInches)
    {
        var (least, most) = (Cylinder.Least * (family?.Cylinders ?? 2), Cylinder.Most * (family?.Cylinders ?? 16));
        return cubicInches is not { } given || (given >= least && given <= most) ? null : new FieldProblem("start.displacement",
            FormattableString.Invariant($"Displacement of this engine must lie between {least:0} and {most:0} cubic inches ({least / CubicInchesPerLitre:0.0#} and {most / CubicInchesPerLitre:0.0#} litres)."), least, most);
    }
}
