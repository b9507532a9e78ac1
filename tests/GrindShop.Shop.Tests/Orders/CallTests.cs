using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;
using GrindShop.Shop.Tests.Demo;
using GrindShop.Shop.Tests.Records;
using GrindShop.Shop.Tests.Specs;
using GrindShop.Testing;

namespace GrindShop.Shop.Tests.Orders;

public sealed class CallTests : IAsyncLifetime
{
    private TestDatabase _database = null!;
    private TestShop _shop = null!;

    public async Task InitializeAsync()
    {
        _database = await ShopTemplates.Scenario.CopyAsync();
        _shop = new TestShop(_database);
    }

    public async Task DisposeAsync()
    {
        await _shop.DisposeAsync();
        await _database.DisposeAsync();
    }

    [Fact]
    public async Task Incomplete_cam_is_taken_in_with_every_word()
    {
        var taken = await _shop.Intake.TakeAsync(Call("230 @.050 solid, like bob's"), "Imka");

        var order = (await _shop.Desk.FindAsync(taken.Order!.Number))!;
        Assert.Null(order.First.Answer);
        Assert.Equal(230, order.First.Spec.Intake.DurationAt050CrankDeg);
        Assert.Equal("solid, like bob's", order.First.Spec.Notes);
        Assert.Contains("As said: 230 @.050 solid, like bob's", Assert.Single(order.History).What, StringComparison.Ordinal);
    }

    /// <summary>With an e-mail address the customer is written to; an incomplete cam has a letter too.</summary>
    [Theory]
    [InlineData("230 @.050 solid")]
    [InlineData("RV8-R 112 lsa 108 icl 2 advanced")]
    [InlineData("")]
    public async Task Incomplete_cam_of_somebody_with_an_address_is_taken_in(string line)
    {
        var call = Call(line);

        Assert.NotNull((await _shop.Intake.TakeAsync(call with { Contact = call.Contact with { Email = "una@example.com" } }, "Imka")).Order);
    }

    [Fact]
    public async Task Contradictory_cam_is_taken_in_too() =>
        Assert.NotNull((await _shop.Intake.TakeAsync(Call("RV8-R 112 lsa 108 icl 2 advanced"), "Imka")).Order);

    [Fact]
    public async Task Call_taken_in_twice_is_one_order()
    {
        var call = Call("230 @.050");
        var (first, second) = (await _shop.Intake.TakeAsync(call, "Imka"), await _shop.Intake.TakeAsync(call, "Imka"));

        Assert.Equal(first.Order!.Number, second.Order!.Number);
        Assert.Equal("keyReused", (await _shop.Intake.TakeAsync(call with { CustomerReference = "x" }, "Imka")).Refusal!.Code);
    }

    [Fact]
    public async Task Nobody_to_answer_to_is_refused() =>
        Assert.Equal(["contact.name", "contact.email"], (await _shop.Intake.TakeAsync(Call("230 @.050") with { Contact = new Contact() }, "Imka")).Problems.Select(problem => problem.Field));

    [Fact]
    public async Task Complete_cam_is_answered()
    {
        var taken = await _shop.Intake.TakeAsync(Call("RV8-R hyd roller 222 @.050 .335 lobe 110+4"), "Imka");

        Assert.NotNull(taken.Order!.First.Answer);
    }

    [Theory]
    [InlineData("5555557342")]
    [InlineData("(555) 555 7342")]
    [InlineData("+1 555.555.7342")]
    public async Task Caller_is_known_by_the_number_in_any_spelling(string phone)
    {
        await _shop.Intake.TakeAsync(Call("RV8-R hyd roller 222/228 @.050 .335 lobe"), "Imka");

        var caller = Assert.Single(await _shop.Callers.FindAsync(new Contact { Phone = phone }));
        Assert.True(caller.Sure);
        Assert.Equal("Una Thornquist", caller.Customer.Name);
        Assert.Single(caller.Like(SpecEntry.Read("222 @.050 335 lobe", SeedFiles.Scenario.Families).Spec));
        Assert.Empty(caller.Like(SpecEntry.Read("232 @.050 335 lobe", SeedFiles.Scenario.Families).Spec));
    }

    [Theory]
    [InlineData("%%%")]
    [InlineData("___")]
    [InlineData("'; DROP TABLE customers; --")]
    public async Task Signs_of_a_search_pattern_are_letters_of_a_name(string name) => Assert.Empty(await _shop.Callers.FindAsync(new Contact { Name = name }));

    [Fact]
    public void Cams_that_share_too_little_are_not_the_same() =>
        Assert.False(NearlySame.Is(new CamSpec { LobeSeparationCamDeg = 112 }, Wishes.Street with { LobeSeparationCamDeg = 112 }));

    private static Enquiry Call(string line) => new()
    {
        SubmitKey = "call",
        Channel = OrderChannel.Phone,
        Spec = SpecEntry.Read(line, SeedFiles.Scenario.Families).Spec,
        Contact = new Contact { Name = "Una Thornquist", Phone = "555-555-7342" },
        AsSaid = line,
    };
}
