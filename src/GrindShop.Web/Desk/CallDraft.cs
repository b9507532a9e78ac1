using System.Text;
using GrindShop.Shop.Engines;
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

    /// <summary>The customer that the caller was said to be; counts where they have no address.</summary>
    public int? Customer { get; set; }

    public string Reference { get; set; } = "";

    public string Notes { get; set; } = "";

    public OrderChannel Channel { get; set; } = OrderChannel.Phone;

    /// <summary>What is to be done.</summary>
    public WorkKind Kind { get; set; }

    public string Condition { get; set; } = "";

    /// <summary>The condition is what the caller tells; the cam is not here.</summary>
    public bool IsExpected { get; set; } = true;

    public MeasuredDraft Measured { get; set; } = new();

    public GearDraft Gear { get; set; } = new();

    /// <summary>The engine of a gear replacement, where it was chosen and not said in the line.</summary>
    public string Engine { get; set; } = "";

    public DistributorGear? Distributor { get; set; }

    public Contact Contact => new() { Name = Text(Name), Phone = Text(Phone), Email = Text(Email) };

    /// <summary>The cam as it was understood, with what was chosen beside the line.</summary>
    public CamEntry Cam(EntryReading reading) => new()
    {
        Kind = Kind,
        Spec = Kind == WorkKind.GearReplacement ? Chosen(reading.Spec) : reading.Spec,
        ReceivedCondition = Kind == WorkKind.NewGrind ? null : Text(Condition),
        IsExpected = Kind != WorkKind.NewGrind && IsExpected,
        Measured = Kind == WorkKind.Regrind ? Measured.Measured : null,
        Gear = Kind == WorkKind.GearReplacement ? Gear.Swap : null,
    };

    /// <summary>The cam that was understood; its notes keep what was not, and the notes typed beside it.</summary>
    public Enquiry Enquiry(EntryReading reading) => Enquiry(Cam(reading));

    private Enquiry Enquiry(CamEntry cam) => new()
    {
        SubmitKey = Key,
        Channel = Channel,
        Kind = cam.Kind,
        Spec = cam.Spec with { Notes = Joined(cam.Spec.Notes, Text(Notes)) },
        ReceivedCondition = cam.ReceivedCondition,
        IsExpected = cam.IsExpected,
        Measured = cam.Measured,
        Gear = cam.Gear,
        Contact = Contact,
        KnownCustomer = Customer,
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

    private CamSpec Chosen(CamSpec said) => said with { EngineFamily = Text(Engine) ?? said.EngineFamily, DistributorGear = Distributor ?? said.DistributorGear };

    private bool IsHalf(int at) => (char.IsHighSurrogate(Line[at]) && !(at + 1 < Line.Length && char.IsLowSurrogate(Line[at + 1])))
        || (char.IsLowSurrogate(Line[at]) && !(at > 0 && char.IsHighSurrogate(Line[at - 1])));

    private static string? Text(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static string? Joined(string? rest, string? notes) => rest is null ? notes : notes is null ? rest : $"{rest}\n{notes}";
}
