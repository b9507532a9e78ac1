using System.Text;
using GrindShop.Shop.BlankCatalog;
using GrindShop.Shop.Blanks;
using GrindShop.Shop.Tests.Records;
using GrindShop.Testing;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Shop.Tests.BlankCatalog;

/// <summary>What a file is follows from its bytes; the first bytes of each kind are those of its own standard (PNG: ISO/IEC 15948; JPEG: ITU-T T.81; PDF: ISO 32000), from memory.</summary>
public sealed class BlankFileStoreTests
{
    public static TheoryData<byte[], string?> Files => new()
    {
        { [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2], "image/png" },
        { [0xFF, 0xD8, 0xFF, 0xE0, 0, 16], "image/jpeg" },
        { Encoding.ASCII.GetBytes("%PDF-1.7 and so on"), "application/pdf" },
        { Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><svg xmlns=\"http://www.w3.org/2000/svg\"/>"), "image/svg+xml" },
        { Encoding.UTF8.GetBytes("\uFEFF  <svg/>"), "image/svg+xml" },
        { Encoding.UTF8.GetBytes("<html><script>alert(1)</script></html>"), null },
        { Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><html/>"), null },
        { [0x4D, 0x5A, 0x90, 0], null },
        { [0x89, 0x50], null },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void The_kind_follows_from_the_bytes(byte[] content, string? kind) => Assert.Equal(kind, BlankFileStore.MediaType(content));

    [Fact]
    public async Task A_file_is_kept_under_a_harmless_name_with_a_line_of_history_and_others_are_refused()
    {
        await using var database = await ShopTemplates.Scenario.CopyAsync();
        await using var shop = new TestShop(database);
        var store = new BlankFileStore(shop.Factory, shop.Clock);
        await using var db = shop.Db();
        var part = await db.BlankParts.FirstAsync();

        Assert.Equal("badSize", (await store.AddAsync(part, "empty.png", [], "Owner")).Refusal!.Code);
        Assert.Equal("badSize", (await store.AddAsync(part, "big.pdf", new byte[BlankFileStore.MostBytes + 1], "Owner")).Refusal!.Code);
        Assert.Equal("notAPicture", (await store.AddAsync(part, "drawing.png", "MZ"u8.ToArray(), "Owner")).Refusal!.Code);
        var kept = (await store.AddAsync(part, "../../nose\r\n\"end\".pdf", "%PDF-1.7"u8.ToArray(), "Owner")).Value!;

        Assert.Equal("nose" + "end.pdf", kept.Name);
        Assert.Equal("%PDF-1.7"u8.ToArray(), (await store.FindAsync(kept.Id))!.Content);
        Assert.Equal("file added", (await db.BlankPartEvents.SingleAsync(line => line.BlankPartId == part.Id)).What);
    }
}
