namespace GrindShop.Shop.Specs.Entry;

/// <summary>A piece of the typed text that was understood.</summary>
/// <param name="Start">Where it begins in the text, characters.</param>
/// <param name="Length">How long it is, characters.</param>
/// <param name="Fields">Paths of the fields it fills, as in the JSON.</param>
/// <param name="Words">How it was read, in words.</param>
public sealed record EntryPart(int Start, int Length, IReadOnlyList<string> Fields, string Words)
{
    public int End => Start + Length;
}

/// <summary>Something in the text that may mean more than one thing, as a question.</summary>
public sealed record EntryDoubt(int Start, int Length, string Question);

/// <summary>What the shop reads from lines typed while listening. Every character but blanks is in a part or in the notes.</summary>
public sealed record EntryReading
{
    /// <summary>The fields that were understood; its notes hold the words that were not.</summary>
    public required CamSpec Spec { get; init; }

    /// <summary>What was understood, in the order of the text, without overlap.</summary>
    public required IReadOnlyList<EntryPart> Parts { get; init; }

    public required IReadOnlyList<EntryDoubt> Doubts { get; init; }

    /// <summary>What was not understood, piece by piece as it stands in the text.</summary>
    public required IReadOnlyList<string> Rest { get; init; }
}
