using Bunit;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Records;
using GrindShop.Web.Office;
using GrindShop.Web.Security;
using GrindShop.Web.Tests.Desk;
using Microsoft.AspNetCore.Components.Web.Virtualization;

namespace GrindShop.Web.Tests.Office;

public sealed class BlankImportTests(StaffShop shop) : IClassFixture<StaffShop>
{
    [Fact]
    public async Task Every_bad_row_of_many_is_named()
    {
        const int Rows = 350;
        var lines = (await shop.Get<CatalogImport>().ExportAsync()).TrimStart('\uFEFF').Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var row = lines[1][lines[1].IndexOf(',', StringComparison.Ordinal)..];
        var text = string.Join("\r\n", Enumerable.Range(0, Rows).Select(number => $"part-{number}{row}").Prepend(lines[0]));
        await using var browser = shop.Browser("Owner", Policies.Office);
        var page = browser.Render<BlankImport>();
        page.WaitForState(() => page.FindAll("#csv").Count == 1, TimeSpan.FromSeconds(30));

        page.FindComponent<FileField>().UploadFiles(InputFileContent.CreateFromText(text, "blanks.csv"));

        page.WaitForState(() => page.FindAll("#wrong").Count == 1, TimeSpan.FromSeconds(60));
        var named = page.FindComponent<Virtualize<RowProblem>>().Instance.Items!.Select(problem => problem.Row);
        Assert.Equal(Enumerable.Range(2, Rows).Select(line => $"line {line}"), named);
        Assert.Contains("PART-7", page.FindAll("#wrong tbody td")[15].TextContent, StringComparison.Ordinal);
        Assert.Contains($"{Rows}", page.Find("#wrong-sum").TextContent, StringComparison.Ordinal);
    }
}
