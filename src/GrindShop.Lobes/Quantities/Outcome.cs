using System.Diagnostics.CodeAnalysis;

namespace GrindShop.Lobes;

/// <summary>Either the value asked for or the typed reason why there is none.</summary>
public sealed class Outcome<TValue, TProblem>
    where TValue : notnull
    where TProblem : class
{
    private Outcome(TValue? value, TProblem? problem) => (Value, Problem) = (value, problem);

    [MemberNotNullWhen(true, nameof(Value))]
    [MemberNotNullWhen(false, nameof(Problem))]
    public bool Succeeded => Problem is null;

    public TValue? Value { get; }

    public TProblem? Problem { get; }

    /// <summary>The value, for callers that have ruled a problem out.</summary>
    /// <exception cref="InvalidOperationException">There is a problem instead; its text is the message.</exception>
    public TValue Required() => Succeeded ? Value : throw new InvalidOperationException(Problem.ToString());

    public static implicit operator Outcome<TValue, TProblem>(TValue value) => new(value, null);

    public static implicit operator Outcome<TValue, TProblem>(TProblem problem) => new(default, problem);
}
