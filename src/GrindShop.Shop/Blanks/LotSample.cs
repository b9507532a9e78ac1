using System.Globalization;
using GrindShop.Lobes;

namespace GrindShop.Shop.Blanks;

/// <summary>What was measured on a few blanks of a lot: the least figures found. Samples are only ever added; the newest figure counts.</summary>
public sealed class LotSample
{
    private LotSample()
    {
    }

    public int Id { get; private set; }

    public int BlankLotId { get; private set; }

    /// <summary>Blanks measured.</summary>
    public int Pieces { get; private set; }

    public double? HardnessValue { get; private set; }

    public HardnessScale? HardnessScale { get; private set; }

    /// <summary>Least depth of the case from the surface, in.</summary>
    public double? CaseDepthIn { get; private set; }

    /// <summary>Least grinding stock per side, in.</summary>
    public double? StockIn { get; private set; }

    public string By { get; private set; } = "";

    public DateTimeOffset At { get; private set; }

    public string Note { get; private set; } = "";

    public HardnessReading? Hardness => HardnessValue is { } value && HardnessScale is { } scale ? new HardnessReading(value, scale) : null;

    /// <summary>A sample of this part, or why it cannot be one.</summary>
    public static Outcome<LotSample> Of(BlankPart part, SampleFigures figures, string by, DateTimeOffset at) =>
        Wrong(part, figures) is { } wrong ? new Refusal("badSample", wrong) : new LotSample
        {
            Pieces = figures.Pieces,
            HardnessValue = figures.Hardness?.Value,
            HardnessScale = figures.Hardness?.Scale,
            CaseDepthIn = figures.CaseDepthIn,
            StockIn = figures.StockIn,
            By = by,
            At = at,
            Note = figures.Note?.Trim() ?? "",
        };

    public string Words() => string.Join(", ", new[]
    {
        $"{Pieces} measured",
        Hardness?.ToString(),
        CaseDepthIn is { } depth ? string.Create(CultureInfo.InvariantCulture, $"case {depth:0.000} in") : null,
        StockIn is { } stock ? string.Create(CultureInfo.InvariantCulture, $"stock {stock:0.000} in") : null,
        Note,
    }.Where(part => !string.IsNullOrEmpty(part)));

    private static string? Wrong(BlankPart part, SampleFigures figures) => figures switch
    {
        { Pieces: < 1 or > 10_000 } => "Say how many blanks were measured, at least one.",
        { Hardness: null, CaseDepthIn: null, StockIn: null } => "Give at least one figure: hardness, case depth or stock.",
        { Hardness: { } reading } when !reading.CanBe => string.Create(CultureInfo.InvariantCulture, $"No blank reads {reading}: between 0 and {Lobes.Hardness.Most(reading.Scale):#,0} is possible. Is it the right scale?"),
        { CaseDepthIn: not null } when part.CaseDepthIn is null => $"{part.PartNumber} has no case that ends; leave the case depth empty.",
        { StockIn: not null } when part.Nominal is null => $"{part.PartNumber} is full round and has no stock around a lobe; leave the stock empty.",
        { CaseDepthIn: < 0 or > 1 or double.NaN } => "A case depth lies between 0 and 1 in.",
        { StockIn: < 0 or > .25 or double.NaN } => "Stock lies between 0 and .25 in per side.",
        { Note.Length: > 500 } => "The note is too long; 500 letters are the most.",
        _ => null,
    };
}

/// <summary>The figures of a sample as they were read.</summary>
public sealed record SampleFigures(int Pieces, HardnessReading? Hardness, double? CaseDepthIn, double? StockIn, string? Note);
