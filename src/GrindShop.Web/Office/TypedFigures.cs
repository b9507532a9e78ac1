using GrindShop.Web.Shell;

namespace GrindShop.Web.Office;

/// <summary>The figures of a form by their names: as they were read, and what is typed over them.</summary>
public sealed class TypedFigures(IReadOnlyDictionary<string, string> read)
{
    private readonly Dictionary<string, string> _typed = new(read);
    private IReadOnlyDictionary<string, string> _read = read;

    public string this[string name]
    {
        get => _typed[name];
        set => _typed[name] = value;
    }

    /// <summary>What was not typed here follows what was saved meanwhile; what was typed stays. Answers what has changed, in words.</summary>
    public string Take(IReadOnlyDictionary<string, string> newer)
    {
        var changed = newer.Where(figure => figure.Value != _read[figure.Key]).Select(figure => $"{figure.Key} from {Say(_read[figure.Key])} to {Say(figure.Value)}").ToList();
        foreach (var (name, figure) in newer)
            _typed[name] = Carry.Of(_read[name], _typed[name], figure);
        _read = newer;
        return changed.Count == 0
            ? "Somebody else saved this in the meantime and changed no figure. What you typed is kept; save it again."
            : $"Somebody else changed this in the meantime: {string.Join("; ", changed)}. What you typed is kept; look at the change, and save again to put yours in its place.";
    }

    private static string Say(string figure) => string.IsNullOrWhiteSpace(figure) ? "none" : figure.Replace("\n", ", ", StringComparison.Ordinal);
}
