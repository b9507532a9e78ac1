using System.Text.Json;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Specs.Entry;

/// <summary>Lines as people say and write them (invented; how they are meant is common practice, no source).</summary>
public class SpecEntryTests
{
    [Theory]
    [MemberData(nameof(Lines))]
    public void Line_is_read_as_it_is_meant(string line)
    {
        var wanted = Written.Single(one => one.Line == line);
        var read = SpecEntry.Read(line, SeedFiles.Scenario.Families);

        Assert.Equal(Json(wanted.Spec), Json(read.Spec));
        Assert.Equal(wanted.Asks?.Count ?? 0, read.Doubts.Count);
        Assert.All(wanted.Asks ?? [], ask => Assert.Contains(read.Doubts, doubt => doubt.Question.Contains(ask, StringComparison.Ordinal)));
    }

    public static TheoryData<string> Lines => [.. Written.Select(line => line.Line)];

    internal static IReadOnlyList<WrittenLine> Written { get; } = JsonSerializer.Deserialize<List<WrittenLine>>(
        File.ReadAllText(Path.Combine(Path.GetDirectoryName(ShopTemplates.SeedFolder)!, "tests", "GrindShop.Shop.Tests", "Specs", "Entry", "lines.json")), ShopJson.Options)!;

    private static string Json(CamSpec spec) => JsonSerializer.Serialize(spec, ShopJson.Options);
}

/// <param name="Line">What is typed.</param>
/// <param name="Spec">What is meant, with what was not understood in its notes.</param>
/// <param name="Asks">Words from each question that must be asked.</param>
internal sealed record WrittenLine(string Line, CamSpec Spec, IReadOnlyList<string>? Asks = null);
