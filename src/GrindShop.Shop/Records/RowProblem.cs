namespace GrindShop.Shop.Records;

/// <summary>What is wrong in a file of rows, precise enough to go and mend it.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Row">Line number of a CSV row, or the key of a JSON entry.</param>
/// <param name="Field">Column or property.</param>
/// <param name="Message">A sentence.</param>
public sealed record RowProblem(string File, string Row, string Field, string Message)
{
    public override string ToString() => $"{File}, {Row}, {Field}: {Message}";
}
