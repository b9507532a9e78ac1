using System.Diagnostics.CodeAnalysis;

namespace GrindShop.Shop;

/// <summary>Why a request was refused: a stable code for programs, a sentence for people.</summary>
public sealed record Refusal(string Code, string Reason)
{
    /// <summary>Somebody else was faster: what was seen is no longer what stands there.</summary>
    public bool IsStale => Code == "stale";
}

/// <summary>An expected result: a value, or the reason why there is none. Nothing has changed when it was refused.</summary>
public sealed class Outcome<T>
{
    private Outcome(T? value, Refusal? refusal) => (Value, Refusal) = (value, refusal);

    public T? Value { get; }

    public Refusal? Refusal { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool Succeeded => Refusal is null;

    public static implicit operator Outcome<T>(T value) => new(value, null);

    public static implicit operator Outcome<T>(Refusal refusal) => new(default, refusal);
}
