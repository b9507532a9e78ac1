namespace GrindShop.Shop.Specs.Entry;

/// <summary>The lobe that was named last: it goes for the figures behind it, to the end of the line, or on where it heads a list.</summary>
internal sealed class LobeContext
{
    private Lobe _lobe;
    private bool _isFresh, _heads;

    public void Name(Lobe lobe, bool heads) => (_lobe, _isFresh, _heads) = (lobe, true, heads);

    public void NewLine()
    {
        if (!_heads && !_isFresh)
            _lobe = Lobe.Unsaid;
    }

    /// <summary>The pair with its lobe as the line says it.</summary>
    public Pair Place(Pair pair)
    {
        var placed = pair.Lobe == Lobe.Unsaid && _lobe != Lobe.Unsaid
            ? pair with { Lobe = _lobe, IsSure = _isFresh || _heads }
            : pair;
        _isFresh = false;
        if (pair.Lobe is Lobe.Intake or Lobe.Exhaust)
            (_lobe, _heads) = (pair.Lobe, false);
        return placed;
    }
}
