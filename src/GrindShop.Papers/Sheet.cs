using GrindShop.Shop.Records;
using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace GrindShop.Papers;

internal enum Align
{
    Left,
    Right,
    Centre,

    /// <summary>The decimal point stands at the given place.</summary>
    Decimal,
}

/// <summary>Letter-size pages to draw on, in points from the top left. Texts are given by their baseline.</summary>
internal sealed class Sheet
{
    public const double Left = 36, Right = 576, Width = Right - Left, Top = 34, Bottom = 752;

    private readonly PdfDocument _document = new();
    private readonly List<XGraphics> _pages = [];
    private readonly XSize _size;

    public Sheet(string title, ShopSettings shop, DateTimeOffset printedAt)
        : this(title, shop, printedAt, PageSizeConverter.ToSize(PageSize.Letter))
    {
    }

    private Sheet(string title, ShopSettings shop, DateTimeOffset printedAt, XSize size)
    {
        _size = size;
        var info = _document.Info;
        (info.Title, info.Author, info.Creator) = (TextFit.Clean(title), TextFit.Clean(shop.ShopName), "GrindShop");
        info.CreationDate = info.ModificationDate = shop.ShopTime(printedAt);
        _document.Language = "en-US";
        AddPage();
    }

    /// <summary>One small page without a last line.</summary>
    public static Sheet Label(string title, ShopSettings shop, DateTimeOffset printedAt, double widthPt, double heightPt) => new(title, shop, printedAt, new XSize(widthPt, heightPt));

    public XGraphics Ink => _pages[^1];

    /// <summary>Where something of this height may start: here, or at the top of the next page when it does not fit any more.</summary>
    public double Room(double y, double height)
    {
        if (y + height <= Bottom)
            return y;
        AddPage();
        Text(Left, Top + 8, $"{_document.Info.Title}, continued", Weight.SemiBold, 10, mostWidth: Width);
        return Top + 18;
    }

    public double Measure(string text, Weight weight, double sizePt) => Ink.MeasureString(text, PaperFonts.Of(weight, sizePt)).Width;

    /// <summary>One line at its baseline; clipped where a greatest width is given.</summary>
    public void Text(double x, double baseline, string? text, Weight weight, double sizePt, Align align = Align.Left, double mostWidth = double.PositiveInfinity)
    {
        var line = TextFit.Clip(TextFit.Clean(text), mostWidth, part => Measure(part, weight, sizePt));
        if (line.Length > 0)
            Ink.DrawString(line, PaperFonts.Of(weight, sizePt), XBrushes.Black, x - Before(line, align, weight, sizePt), baseline);
    }

    /// <summary>Lines broken at the width, the first at <paramref name="baseline"/>; answers the baseline after the last.</summary>
    public double Lines(double x, double baseline, double width, string? text, Weight weight, double sizePt, int mostLines = 100, double leading = 1.28)
    {
        foreach (var line in TextFit.Wrap(TextFit.Clean(text), width, mostLines, part => Measure(part, weight, sizePt)))
        {
            Text(x, baseline, line, weight, sizePt);
            baseline += sizePt * leading;
        }
        return baseline;
    }

    /// <summary>A section's title on its rule; answers the y below it.</summary>
    public double Title(double x, double y, double width, string text)
    {
        Rule(x, y, width, 1);
        Text(x, y + 11.5, text, Weight.SemiBold, 9.5, mostWidth: width);
        return y + 17;
    }

    public void Rule(double x, double y, double width, double thickness = .5) => Ink.DrawLine(new XPen(XColors.Black, thickness), x, y, x + width, y);

    /// <summary>The light line between rows.</summary>
    public void Hairline(double x, double y, double width) => Ink.DrawLine(new XPen(XColor.FromGrayScale(.6), .4), x, y, x + width, y);

    public void Box(double x, double y, double width, double height, double thickness = .5) =>
        Ink.DrawRectangle(new XPen(XColors.Black, thickness), x, y, width, height);

    /// <summary>The file; every page gets the same last line with its number.</summary>
    public byte[] Finish(string lastLine)
    {
        for (var i = 0; i < _pages.Count; i++)
        {
            Foot(_pages[i], lastLine, $"page {i + 1} of {_pages.Count}");
        }
        return Close();
    }

    /// <summary>The file as it stands.</summary>
    public byte[] Close()
    {
        foreach (var page in _pages)
            page.Dispose();
        using var file = new MemoryStream();
        _document.Save(file, closeStream: false);
        return file.ToArray();
    }

    private void AddPage()
    {
        var page = _document.AddPage();
        (page.Width, page.Height) = (XUnit.FromPoint(_size.Width), XUnit.FromPoint(_size.Height));
        _pages.Add(XGraphics.FromPdfPage(page));
    }

    private static void Foot(XGraphics ink, string lastLine, string page)
    {
        var font = PaperFonts.Of(Weight.Regular, 7);
        var line = TextFit.Clip(TextFit.Clean(lastLine), Width - 60, part => ink.MeasureString(part, font).Width);
        ink.DrawString(line, font, XBrushes.Black, Left, Bottom + 16);
        ink.DrawString(page, font, XBrushes.Black, Right - ink.MeasureString(page, font).Width, Bottom + 16);
    }

    private double Before(string line, Align align, Weight weight, double sizePt) => align switch
    {
        Align.Left => 0,
        Align.Right => Measure(line, weight, sizePt),
        Align.Centre => Measure(line, weight, sizePt) / 2,
        _ => Measure(line.Contains('.') ? line[..line.IndexOf('.')] : line, weight, sizePt),
    };
}
