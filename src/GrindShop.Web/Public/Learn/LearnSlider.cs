using System.Globalization;

namespace GrindShop.Web.Public.Learn;

/// <summary>A figure of an example that the reader may move.</summary>
/// <param name="Key">Its name in the address.</param>
/// <param name="Label">What it is, in plain words.</param>
/// <param name="Least">Least value.</param>
/// <param name="Most">Greatest value.</param>
/// <param name="Step">From one stop to the next.</param>
/// <param name="Usual">Where it stands at first.</param>
/// <param name="Unit">Unit of the figure.</param>
/// <param name="Format">Numeric format of the figure.</param>
public sealed record LearnSlider(string Key, string Label, double Least, double Most, double Step, double Usual, string Unit, string Format = "0.000")
{
    public string Say(double value) => $"{value.ToString(Format, CultureInfo.InvariantCulture)} {Unit}";

    /// <summary>The nearest stop in range; the usual one for what is not a number.</summary>
    public double Stop(double value) => double.IsFinite(value) ? Math.Clamp(Least + Math.Round((value - Least) / Step) * Step, Least, Most) : Usual;
}
