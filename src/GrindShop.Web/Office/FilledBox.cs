namespace GrindShop.Web.Office;

/// <summary>A box filled with what the shop's book says: it follows the book until somebody types in it.</summary>
public sealed class FilledBox
{
    private string _filled = "", _book = "";

    public string Typed { get; set; } = "";

    /// <summary>Somebody typed here, and the book has changed since the box was filled.</summary>
    public bool IsStale => _filled != _book && Typed.Trim() != _book;

    public void Follow(string book)
    {
        _book = book;
        if (Typed.Trim() == _filled || Typed.Trim() == book)
            Typed = _filled = book;
    }

    /// <summary>The change has been shown; what was typed stays.</summary>
    public void Look() => _filled = _book;
}
