namespace GrindShop.Shop.Orders;

public enum PaidBy
{
    Cash,
    Check,
    BankTransfer,

    /// <summary>At a card terminal outside this program, which handles no card data.</summary>
    CardTerminal,
}

/// <summary>Money that came in before shipping, or was given back (negative). Lines are only ever added.</summary>
public sealed class Deposit(decimal amount, PaidBy how, DateOnly paidOn, string note, string by, DateTimeOffset at, string commandKey)
{
    public int Id { get; private set; }

    public int OrderId { get; private set; }

    /// <summary>US dollars.</summary>
    public decimal Amount { get; private set; } = amount;

    public PaidBy How { get; private set; } = how;

    /// <summary>The day the money came, in the shop's zone.</summary>
    public DateOnly PaidOn { get; private set; } = paidOn;

    public string Note { get; private set; } = note;

    public string By { get; private set; } = by;

    public DateTimeOffset At { get; private set; } = at;

    /// <summary>The browser's own key for the command, so that a repeated one is known.</summary>
    public string CommandKey { get; private set; } = commandKey;
}

/// <summary>What the desk writes down about money.</summary>
public sealed record DepositEntry(decimal Amount, PaidBy How, DateOnly PaidOn, string Note, string CommandKey);
