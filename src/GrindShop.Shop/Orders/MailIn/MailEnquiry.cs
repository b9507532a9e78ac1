using System.Security.Cryptography;
using System.Text;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;

namespace GrindShop.Shop.Orders;

/// <summary>What a mail asks for: the fields that were understood, everything else as notes.</summary>
public static class MailEnquiry
{
    /// <summary>The words that are read for a cam: subject and text, without what cannot be printed.</summary>
    public static string Said(ReadMail mail) => MailText.Cut($"{mail.Subject}\n{OwnWords.Of(mail.Text)}".Trim(), OutgoingMail.LongestText).Replace('\uFFFD', '?');

    public static Enquiry Of(ArrivedMail arrived, IReadOnlyList<EngineFamily> families)
    {
        var (mail, spec) = (arrived.Mail, SpecEntry.Read(Said(arrived.Mail), families).Spec);
        return new Enquiry
        {
            SubmitKey = $"mail:{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(arrived.Source)))}",
            Channel = OrderChannel.Email,
            Contact = new Contact { Name = Name(mail), Email = mail.From },
            Spec = spec with { Notes = spec.Notes is { } notes ? MailText.Cut(notes, SpecCheck.LongestNote) : null },
        };
    }

    /// <summary>The sender's name, or the first half of the address.</summary>
    public static string Name(ReadMail mail) => MailText.OneLine((mail.FromName.Length > 0 ? mail.FromName : mail.From.Split('@')[0]).Replace('\uFFFD', '?'), 100);
}
