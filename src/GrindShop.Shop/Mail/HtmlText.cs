using System.Text;
using MimeKit.Text;

namespace GrindShop.Shop.Mail;

/// <summary>The words of an HTML mail. Nothing in it is run, fetched or kept but its text.</summary>
public static class HtmlText
{
    private static readonly HashSet<HtmlTagId> Hidden = [HtmlTagId.Script, HtmlTagId.Style, HtmlTagId.Head, HtmlTagId.Title, HtmlTagId.NoScript];
    private static readonly HashSet<HtmlTagId> Breaks = [HtmlTagId.Br, HtmlTagId.P, HtmlTagId.Div, HtmlTagId.TR, HtmlTagId.LI, HtmlTagId.H1, HtmlTagId.H2, HtmlTagId.H3, HtmlTagId.Table];

    public static string Read(string html)
    {
        var text = new StringBuilder();
        var hidden = 0;
        var tokens = new HtmlTokenizer(new StringReader(html)) { DecodeCharacterReferences = true };
        while (tokens.ReadNextToken(out var token))
        {
            if (token is HtmlTagToken tag)
                hidden = tag is { Id: HtmlTagId.Body, IsEndTag: false } ? 0 : Math.Max(0, hidden + Depth(tag)); // the end tag of head may be left out
            if (hidden == 0)
                text.Append(Words(token));
        }
        return string.Join('\n', text.ToString().Split('\n').Select(line => MailText.OneLine(line, 10_000)).Where(line => line.Length > 0));
    }

    private static int Depth(HtmlTagToken tag) => !Hidden.Contains(tag.Id) || tag.IsEmptyElement ? 0 : tag.IsEndTag ? -1 : 1;

    private static string Words(HtmlToken token) => token switch
    {
        HtmlTagToken tag => Breaks.Contains(tag.Id) ? "\n" : tag.Id is HtmlTagId.TD or HtmlTagId.TH ? " " : "",
        HtmlScriptDataToken => "",
        HtmlDataToken data => data.Data.ReplaceLineEndings(" "),
        _ => "",
    };
}
