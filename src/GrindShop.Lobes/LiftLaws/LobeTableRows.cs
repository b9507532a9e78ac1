using System.Collections.Immutable;

namespace GrindShop.Lobes;

/// <summary>The rows of a table file, checked one by one.</summary>
internal sealed class LobeTableRows(char separator, int lobes, LengthUnit unit)
{
    private const double WidestDeg = 720, MostLiftIn = 2;
    private readonly List<BrokenRow> broken = [];
    private readonly List<TablePoint>[] points = [.. Enumerable.Range(0, Math.Max(lobes, 0)).Select(_ => new List<TablePoint>())];
    private readonly HashSet<double> seen = [];

    public void Add(int line, string row)
    {
        var cells = row.Split(separator);
        var why = Why(cells, out var values);
        if (why is not null)
            broken.Add(new(line, why));
        else if (!seen.Add(values[0]))
            broken.Add(new(line, $"The angle {cells[0].Trim()} stands in the table twice."));
        else
            for (var i = 0; i < lobes; i++)
                points[i].Add(new(values[0], values[i + 1] / unit.PerInch()));
    }

    public LobeTableFile Finish(string[]? header)
    {
        if (lobes < 1)
            broken.Insert(0, new(1, "A row needs a cam degree and at least one lift."));
        return new(
            [.. points.Select((list, i) => new LobeTable(header?.ElementAtOrDefault(i + 1) ?? $"Lobe {i + 1}", [.. list]))],
            [.. broken]);
    }

    private string? Why(string[] cells, out double[] values)
    {
        values = new double[cells.Length];
        if (cells.Length != lobes + 1)
            return $"The row has {cells.Length} cells, {lobes + 1} are needed.";
        for (var i = 0; i < cells.Length; i++)
        {
            if (LobeTableCsv.Number(cells[i], separator) is not { } value)
                return $"\"{cells[i].Trim()}\" is not a number.";
            values[i] = value;
        }
        if (Math.Abs(values[0]) > WidestDeg)
            return $"The cam degree {cells[0].Trim()} is outside -720 to 720.";
        var odd = Array.FindIndex(values, 1, v => Math.Abs(v) > MostLiftIn * unit.PerInch());
        return odd < 0 ? null : $"The lift {cells[odd].Trim()} {unit.Name()} is too large for a lobe.";
    }
}
