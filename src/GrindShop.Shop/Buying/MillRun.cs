using MathNet.Numerics.Distributions;

namespace GrindShop.Shop.Buying;

/// <summary>What a run of this size is expected to cost, as present value over the horizon.</summary>
/// <param name="Quantity">Blanks milled.</param>
/// <param name="UnitPrice">Of one blank at this quantity.</param>
/// <param name="Outlay">Paid at once: blanks and set-up.</param>
/// <param name="YearsOfCover">At the expected demand.</param>
/// <param name="PresentValue">Outlay, storage, and the alternative once the run is used up; expected, as of today.</param>
/// <param name="CostPerCam">The steady price of a blank that would cost the same, present value over the present value of the cams.</param>
/// <param name="ChanceOfLeftovers">Probability that the run outlasts the horizon.</param>
public sealed record MillRunCost(int Quantity, double UnitPrice, double Outlay, double YearsOfCover, double PresentValue, double CostPerCam, double ChanceOfLeftovers);

/// <summary>
/// A mill run against buying as needed. Cash is discounted continuously at ln(1 + cost of capital); that the cam is wanted at all fades at
/// -ln(1 - obsolescence). Demand flows evenly at a rate that is not known: equally likely rates of a gamma distribution stand for it.
/// </summary>
public sealed class MillRun
{
    /// <summary>How many equally likely rates stand for an uncertain demand.</summary>
    public const int Rates = 41;

    private const int MostTried = 20_000;
    private readonly double _fade, _otherwise;
    private readonly double[] _rates;

    /// <param name="assumed">A case that <see cref="MillRunCase.Refuse"/> has nothing against.</param>
    public MillRun(MillRunCase assumed)
    {
        if (assumed.Refuse() is { } refusal)
            throw new ArgumentException(refusal.Reason, nameof(assumed));
        Case = assumed;
        _fade = Math.Log(1 + assumed.CostOfCapital) - Math.Log(1 - assumed.ObsolescenceAYear);
        _otherwise = assumed.Best.CostPerCam(assumed.LostMargin);
        _rates = RatesOf(assumed);
    }

    public MillRunCase Case { get; }

    /// <summary>What each cam costs without the run.</summary>
    public double CostPerCamWithout => _otherwise;

    /// <summary>Present value of what is spent without the run.</summary>
    public double PresentValueWithout => _otherwise * Cams;

    /// <summary>The quantity of the least cost.</summary>
    public MillRunCost Cheapest => Tried().MinBy(cost => cost.PresentValue)!;

    /// <summary>The least run that costs no more than doing without it; null where none does.</summary>
    public MillRunCost? BreakEven => Tried().FirstOrDefault(cost => cost.PresentValue <= PresentValueWithout);

    /// <summary>The largest run that costs no more than doing without it; null where none does.</summary>
    public MillRunCost? LastThatPays => Tried().LastOrDefault(cost => cost.PresentValue <= PresentValueWithout);

    /// <summary>
    /// The usual one-purchase rule beside it: gain is what a blank of the run saves against the alternative, loss its price; no interest, no storage.
    /// Null where a blank saves nothing.
    /// </summary>
    public Newsvendor? OnePurchase(int quantity)
    {
        var (gain, loss) = (_otherwise - Case.UnitPrice(quantity), Case.UnitPrice(quantity));
        var (mean, deviation) = (Case.YearlyDemand * Case.HorizonYears, Case.YearlyDeviation * Case.HorizonYears);
        return gain > 0 && loss > 0 ? new Newsvendor(Demand.Of(mean, mean + deviation * deviation), gain, loss) : null;
    }

    /// <summary>Present value of all cams wanted over the horizon, in cams.</summary>
    private double Cams => _rates.Average() * Annuity(Case.HorizonYears);

    public MillRunCost Cost(int quantity)
    {
        var outlay = quantity * Case.UnitPrice(quantity) + Case.SetupCharge;
        var value = outlay + _rates.Average(rate => After(quantity, rate));
        return new MillRunCost(quantity, Case.UnitPrice(quantity), outlay, quantity / Case.YearlyDemand, value, value / Cams,
            _rates.Count(rate => rate * Case.HorizonYears < quantity) / (double)_rates.Length);
    }

    /// <summary>Storage while the run lasts and the alternative afterwards, at one rate of demand.</summary>
    private double After(int quantity, double rate)
    {
        var lasts = Math.Min(quantity / rate, Case.HorizonYears);
        var storage = Case.StorageAYear * (quantity * Annuity(lasts) - rate * Ramp(lasts));
        return storage + _otherwise * rate * (Annuity(Case.HorizonYears) - Annuity(lasts));
    }

    /// <summary>Every quantity from the least one to what the horizon could use at the highest rate, in steps where they are very many.</summary>
    private IEnumerable<MillRunCost> Tried()
    {
        var most = Math.Max(Case.PriceBreaks.Max(step => step.FromQuantity), (int)Math.Ceiling(_rates.Max() * Case.HorizonYears));
        var step = 1 + (most - Case.LeastQuantity) / MostTried;
        for (var quantity = Case.LeastQuantity; quantity <= most; quantity += step)
            yield return Cost(quantity);
    }

    /// <summary>Integral of exp(-fade t) from now to then, years.</summary>
    private double Annuity(double years) => _fade < 1e-12 ? years : (1 - Math.Exp(-_fade * years)) / _fade;

    /// <summary>Integral of t exp(-fade t).</summary>
    private double Ramp(double years) => _fade < 1e-6 ? years * years / 2 : (1 - Math.Exp(-_fade * years) * (1 + _fade * years)) / (_fade * _fade);

    private static double[] RatesOf(MillRunCase assumed)
    {
        if (assumed.YearlyDeviation == 0)
            return [assumed.YearlyDemand];
        var spread = assumed.YearlyDeviation / assumed.YearlyDemand;
        var shape = 1 / (spread * spread);
        double[] rates = [.. Enumerable.Range(0, Rates).Select(i => Gamma.InvCDF(shape, shape, (i + .5) / Rates))];
        return [.. rates.Select(rate => rate / rates.Average() * assumed.YearlyDemand)];
    }
}
