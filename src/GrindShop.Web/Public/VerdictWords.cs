using GrindShop.Shop.Feasibility;

namespace GrindShop.Web.Public;

/// <summary>How verdicts are said and marked to a customer: a sign, a class for its colour, and words that carry the meaning alone.</summary>
public static class VerdictWords
{
    public static string Words(this Verdict verdict) => verdict switch
    {
        Verdict.FromStock => "Can be ground from a blank in stock",
        Verdict.SpecialOrder => "Can be ground; the blank is to be ordered",
        _ => "Cannot be ground as described",
    };

    public static string Sign(this Verdict verdict) => verdict switch
    {
        Verdict.FromStock => "✓",
        Verdict.SpecialOrder => "◷",
        _ => "✕",
    };

    public static string Tone(this Verdict verdict) => verdict switch
    {
        Verdict.FromStock => "ok",
        Verdict.SpecialOrder => "care",
        _ => "no",
    };

    public static string Sign(this GearVerdict verdict) => verdict switch
    {
        GearVerdict.Ok => "✓",
        GearVerdict.Caution => "△",
        GearVerdict.No => "✕",
        _ => "–",
    };

    public static string Tone(this GearVerdict verdict) => verdict switch
    {
        GearVerdict.Ok => "ok",
        GearVerdict.Caution => "care",
        GearVerdict.No => "no",
        _ => "calm",
    };

    public static string Words(this GearVerdict verdict) => verdict switch
    {
        GearVerdict.Ok => "The distributor gear runs with it.",
        GearVerdict.Caution => "Take care with the distributor gear.",
        GearVerdict.No => "The distributor gear must not run with it.",
        _ => "",
    };
}
