using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Buying;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests;

public partial class HouseRulesTests
{
    private static readonly string Source = Path.Combine(Path.GetDirectoryName(ShopTemplates.SeedFolder)!, "src");

    [Theory]
    [InlineData("GrindShop.Lobes")]
    [InlineData("GrindShop.Shop", "GrindShop.Lobes")]
    [InlineData("GrindShop.Papers", "GrindShop.Lobes", "GrindShop.Shop")]
    [InlineData("GrindShop.Web", "GrindShop.Lobes", "GrindShop.Shop", "GrindShop.Papers")]
    public void Imports_run_one_way(string project, params string[] allowed)
    {
        var imports = XDocument.Load(Path.Combine(Source, project, $"{project}.csproj")).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value));

        Assert.Empty(imports.Except(allowed));
    }

    [Fact]
    public void Folders_of_the_shop_stand_in_no_circle()
    {
        var uses = FolderUses();
        while (uses.Keys.FirstOrDefault(folder => !uses[folder].Any(uses.ContainsKey)) is { } bottom)
            uses.Remove(bottom);

        Assert.Empty(uses.Select(folder => $"{folder.Key} uses {string.Join(", ", folder.Value.Where(uses.ContainsKey))}"));
    }

    [Fact]
    public void Records_stand_on_people_alone() => Assert.Subset(new HashSet<string> { "People" }, FolderUses()["Records"].ToHashSet());

    [Fact]
    public void Nothing_uses_the_demo() => Assert.DoesNotContain(FolderUses(), folder => folder.Value.Contains("Demo"));

    [Theory]
    [InlineData(typeof(Order))]
    [InlineData(typeof(OrderEvent))]
    [InlineData(typeof(Job))]
    [InlineData(typeof(JobStep))]
    [InlineData(typeof(JobEvent))]
    [InlineData(typeof(BlankLot))]
    [InlineData(typeof(StockMovement))]
    [InlineData(typeof(PurchaseOrder))]
    [InlineData(typeof(PurchaseLine))]
    [InlineData(typeof(PurchaseReceipt))]
    [InlineData(typeof(PurchaseEvent))]
    [InlineData(typeof(SupplyTerms))]
    [InlineData(typeof(BuyingRules))]
    public void State_changes_only_by_the_entitys_own_methods(Type entity) =>
        Assert.DoesNotContain(entity.GetProperties(BindingFlags.Instance | BindingFlags.Public), property => property.SetMethod is { IsPublic: true });

    [Fact]
    public void Files_are_short() => Assert.DoesNotContain(Files("*.cs", "*.razor", "*.js", "*.css"), file => File.ReadLines(file).Count() > 300);

    [Fact]
    public void Nothing_is_left_to_do_and_no_thread_sleeps() =>
        Assert.DoesNotContain(Files("*.cs", "*.razor"), file => LeftOver().IsMatch(File.ReadAllText(file)));

    [Fact]
    public void What_is_done_one_at_a_time_has_a_number_of_its_own()
    {
        var numbers = typeof(Turn).GetFields().Select(field => (long)field.GetRawConstantValue()!).ToList();

        Assert.NotEmpty(numbers);
        Assert.Equal(numbers.Distinct(), numbers);
        Assert.All(Files("*.cs").SelectMany(file => AdvisoryLock().Matches(File.ReadAllText(file))), use => Assert.Matches(@"^\{Turn\.|^hashtextextended|^\$1", use.Groups["number"].Value));
    }

    private static IEnumerable<string> Files(params string[] patterns) => patterns
        .SelectMany(pattern => Directory.EnumerateFiles(Source, pattern, SearchOption.AllDirectories))
        .Where(file => !Generated().IsMatch(file));

    /// <summary>What each folder of the shop names: by a using, or by a name that starts with another folder's.</summary>
    private static Dictionary<string, HashSet<string>> FolderUses()
    {
        var root = Path.Combine(Source, "GrindShop.Shop");
        var folders = Directory.GetDirectories(root).Select(Path.GetFileName).Where(folder => folder is not ("bin" or "obj")).ToHashSet();
        return folders.ToDictionary(
            folder => folder!,
            folder => Files("*.cs").Where(file => file.StartsWith(Path.Combine(root, folder!) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                .SelectMany(file => FolderName().Matches(File.ReadAllText(file)).Select(match => match.Groups["folder"].Value))
                .Where(used => used != folder && folders.Contains(used)).ToHashSet());
    }

    [GeneratedRegex(@"GrindShop\.Shop\.(?<folder>\w+)|(?<=[\s(<])(?<folder>Feasibility|Orders|Routing|Demo)\.[A-Z]\w+(?=[\s>(?])")]
    private static partial Regex FolderName();

    [GeneratedRegex(@"pg_(try_)?advisory_\w+\((?<number>\S+)")]
    private static partial Regex AdvisoryLock();

    [GeneratedRegex(@"\bTODO\b|Thread\.Sleep")]
    private static partial Regex LeftOver();

    [GeneratedRegex(@"/(bin|obj|Migrations)/|\.min\.")]
    private static partial Regex Generated();
}
