using System.Security.Cryptography;
using System.Text.Json;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>Who wants the cam and how to reach them.</summary>
public sealed record Contact
{
    public string? Name { get; init; }

    public string? Email { get; init; }

    public string? Phone { get; init; }
}

/// <summary>What a customer sends: a specification, a contact and the sender's key that makes a repeated sending harmless.</summary>
public sealed record Enquiry
{
    public required string SubmitKey { get; init; }

    public required OrderChannel Channel { get; init; }

    public required CamSpec Spec { get; init; }

    public WorkKind Kind { get; init; }

    /// <summary>Like pieces.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>How a cam that came in for a repair or a regrind looks.</summary>
    public string? ReceivedCondition { get; init; }

    /// <summary>The condition is what the customer tells; the cam is not here yet.</summary>
    public bool IsExpected { get; init; }

    public MeasuredCam? Measured { get; init; }

    public GearSwap? Gear { get; init; }

    public required Contact Contact { get; init; }

    /// <summary>The customer's number in the database, where the desk knows them and they have no address to be known by.</summary>
    public int? KnownCustomer { get; init; }

    public string? CustomerReference { get; init; }

    /// <summary>The words of a call or a visit as the desk typed them; they go into the history.</summary>
    public string? AsSaid { get; init; }

    public CamEntry Cam => new() { Kind = Kind, Quantity = Quantity, Spec = Spec, ReceivedCondition = ReceivedCondition, IsExpected = IsExpected, Measured = Measured, Gear = Gear };

    /// <summary>SHA-256 of the content without the key, hexadecimal.</summary>
    public string Digest() => Convert.ToHexString(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new { Channel, Cam, Contact, CustomerReference })));
}

/// <summary>The two names of a new order: the spoken number and the secret tracking code.</summary>
public sealed record OrderNumbers(string Number, string TrackingCode)
{
    /// <param name="sequence">The next value of the database's order sequence.</param>
    public static OrderNumbers Next(long sequence) => new($"C{sequence}", DrawTrackingCode());

    internal static string DrawTrackingCode() => SecretCode.Draw(14);
}
