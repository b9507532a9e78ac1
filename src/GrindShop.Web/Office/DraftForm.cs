using GrindShop.Shop.Buying;
using GrindShop.Web.Public;

namespace GrindShop.Web.Office;

/// <summary>What is typed of one part for a draft. The price follows the quantity by the supplier's terms until somebody types another.</summary>
public sealed class DraftForm
{
    private readonly SupplyTerms _terms;
    private string _quantity, _price;
    private bool _ownPrice;

    /// <param name="need">The part, bought from the draft's supplier.</param>
    /// <param name="line">What stands on the draft of it; null for nothing.</param>
    public DraftForm(PartNeed need, PurchaseLine? line)
    {
        _terms = need.Terms;
        _quantity = $"{line?.Quantity ?? (need.Quantity > 0 ? need.Quantity : OrderQuantity.Sold(1, need.Terms.LeastQuantity, need.Terms.Multiple))}";
        _ownPrice = line is not null && line.UnitCost != _terms.UnitPrice(line.Quantity);
        _price = Text(line?.UnitCost ?? ByTerms);
    }

    public string Quantity
    {
        get => _quantity;
        set
        {
            _quantity = value;
            if (!_ownPrice && ByTerms is { } price)
                _price = Text(price);
        }
    }

    /// <summary>Emptied, it follows the next quantity again.</summary>
    public string Price
    {
        get => _price;
        set => (_ownPrice, _price) = (!string.IsNullOrWhiteSpace(value), value);
    }

    public string PriceHint => ByTerms is { } price ? $"By the terms for {Count}: {Money.Dollars(price)}" : "By the terms once a number of blanks stands there.";

    private int? Count
    {
        get
        {
            var read = new FigureReader();
            return read.Count(_quantity, "number of blanks") is var count and > 0 && read.Refusal is null ? count : null;
        }
    }

    private decimal? ByTerms => Count is { } count ? _terms.UnitPrice(count) : null;

    private static string Text(decimal? price) => NumberText.Write((double?)price);
}
