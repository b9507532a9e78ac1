using System.Text;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;

namespace GrindShop.Web.Desk;

/// <summary>A call while it is being typed, exactly as it stands there; kept by the browser until it is taken in.</summary>
public sealed class CallDraft
{
    /// <summary>The same key taken in again is the same order.</summary>
    public string Key { get; set; } = Guid.NewGuid().ToString("N");

    public string Line { get; set; } = "";

    public string Name { get; set; } = "";

    public string Phone { get; set; } = "";

    public string Email { get; set; } = "";

    public string Reference { get; set; } = "";

    public string Notes { get; set; } = "";

    public OrderChannel Channel { get; set; } = OrderChannel.Phone;

    public Contact Contact => new() { Name = Text(Name), Phone = Text(Phone), Email = Text(Email) };

    /// <summary>The specification that was understood; its notes keep what was not, and the notes typed beside it.</summary>
    public Enquiry Enquiry(EntryReading reading) => new()
    {
        SubmitKey = Key,
        Channel = Channel,
        Spec = reading.Spec with { Notes = Joined(reading.Spec.Notes, Text(Notes)) },
        Contact = Contact,
        CustomerReference = Text(Reference),
        AsSaid = Text(Line),
    };

    /// <summary>The line without characters that no paper can print; each becomes a blank, so that places in the text stay.</summary>
    public string Readable()
    {
        var line = new StringBuilder(Line);
        for (var at = 0; at < line.Length; at++)
            if ((char.IsControl(line[at]) && line[at] is not ('\n' or '\r' or '\t')) || line[at] == '\ufffd' || IsHalf(at))
                line[at] = ' ';
        return line.ToString();
    }

    private bool IsHalf(int at) => (char.IsHighSurrogate(Line[at]) && !(at + 1 < Line.Length && char.IsLowSurrogate(Line[at + 1])))
        || (char.IsLowSurrogate(Line[at]) && !(at > 0 && char.IsHighSurrogate(Line[at - 1])));

    private static string? Text(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static string? Joined(string? rest, string? notes) => rest is null ? notes : notes is null ? rest : $"{rest}\n{notes}";
}
