namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    private readonly List<Deposit> _deposits = [];

    /// <summary>Money that came in or was given back, oldest first.</summary>
    public IReadOnlyList<Deposit> Deposits => [.. _deposits.OrderBy(deposit => deposit.Id)];

    /// <summary>What was received so far, US dollars.</summary>
    public decimal Received => _deposits.Sum(deposit => deposit.Amount);

    /// <summary>What is still to be paid; negative where more came in than the price.</summary>
    public decimal Balance => Price - Received;

    /// <summary>Writes down money that came in, or (negative) was given back. The same key a second time changes nothing.</summary>
    public Outcome<Order> RecordDeposit(DepositEntry entry, DateOnly today, string by, DateTimeOffset at)
    {
        if (_deposits.Exists(deposit => deposit.CommandKey == entry.CommandKey))
            return this;
        if (entry.Amount == 0 || decimal.Round(entry.Amount, 2) != entry.Amount || Math.Abs(entry.Amount) > 1_000_000)
            return new Refusal("badAmount", "Give the amount in dollars and cents; below zero for money given back.");
        if (Received + entry.Amount < 0)
            return new Refusal("badAmount", FormattableString.Invariant($"Only ${Received:N2} was received; no more can be given back."));
        if (entry.PaidOn > today || entry.PaidOn < today.AddYears(-1))
            return new Refusal("badDay", "The day of the payment must not lie ahead, nor more than a year back.");
        _deposits.Add(new Deposit(entry.Amount, entry.How, entry.PaidOn, entry.Note.Trim(), by, at, entry.CommandKey));
        Note(OrderEventKind.Deposit, by, at, FormattableString.Invariant($"{(entry.Amount > 0 ? "Received" : "Given back")} ${Math.Abs(entry.Amount):N2} ({entry.How.Words()}) on {entry.PaidOn:yyyy-MM-dd}."));
        return this;
    }
}
