using GrindShop.Web.Api;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace GrindShop.Web.Tests.Api;

public sealed class ApiBookTests(ShopApp app) : IClassFixture<ShopApp>
{
    [Fact]
    public async Task The_reference_lists_every_field_of_a_request_with_its_range_and_of_its_answer()
    {
        using var scope = app.Services.CreateScope();
        var calls = await scope.ServiceProvider.GetRequiredService<ApiBook>().CallsAsync();
        var stock = calls.Single(call => call.Address == "/api/v1/calc/stock");

        Assert.Equal(11, calls.Count);
        Assert.Contains(new ApiField("finish.lobe.lobeLiftIn", "number", "0.0501 to 1", true), stock.Takes);
        Assert.Contains(stock.Takes, field => field is { Path: "blank.form", Kind: "milled | round", IsRequired: true });
        Assert.Contains(stock.Answers, field => field.Path == "maxBaseCircleDiameterIn");
        Assert.Contains(calls.Single(call => call.Address.EndsWith("/feasibility", StringComparison.Ordinal)).Answers, field => field.Path == "blanks[].gear.verdict");
    }
}
