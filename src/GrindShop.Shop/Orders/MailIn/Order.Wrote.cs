using GrindShop.Shop.Mail;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>
    /// A mail about the order came in. The customer's answers the open question where there is just one, and an order that waited for an answer goes back to
    /// the desk; one from another address is only written down.
    /// </summary>
    internal void Wrote(ReadMail mail, bool isCustomers, DateTimeOffset at)
    {
        WakeUp();
        var about = mail.Subject.Length == 0 ? "" : $": {mail.Subject}";
        if (!isCustomers)
            Note(OrderEventKind.Wrote, "e-mail", at, $"A mail of {mail.From}, which is not the customer's address{about}");
        else if (State != OrderState.WaitingForCustomer)
            Note(OrderEventKind.Wrote, MailEnquiry.Name(mail), at, $"Wrote an e-mail{about}");
        else
        {
            AnswerOnly(mail, at);
            Enter(OrderState.New, OrderEventKind.Answered, MailEnquiry.Name(mail), at, $"Answered by e-mail{about}");
        }
    }

    private void AnswerOnly(ReadMail mail, DateTimeOffset at)
    {
        var words = MailText.Cut(OwnWords.Of(mail.Text), Orders.Reply.LongestWords);
        if (words.Length > 0 && _questions.FindAll(question => question.LastReply is null) is [var only])
            only.Add(new Reply(null, words, MailEnquiry.Name(mail), at, $"mail:{mail.Digest()}"));
    }
}
