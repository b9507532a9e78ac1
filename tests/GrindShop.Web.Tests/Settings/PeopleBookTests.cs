using GrindShop.Shop.People;
using GrindShop.Web.Settings;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Settings;

/// <summary>The owner decides who may sign in; an owner always remains.</summary>
public sealed class PeopleBookTests(ShopApp app) : IClassFixture<ShopApp>
{
    private PeopleBook Book => app.Services.GetRequiredService<PeopleBook>();

    [Fact]
    public async Task A_new_person_signs_in_with_the_password_that_was_shown()
    {
        var added = (await Book.AddAsync("Wilma Sedge", "wilma@grindshop.example", Roles.Floor, "starts on Monday", "Owner")).Value!;

        Assert.True(await SignsInAsync("wilma@grindshop.example", added.Password));
        Assert.Contains(await Book.AllAsync(), worker => worker is { Name: "Wilma Sedge", Role: Roles.Floor, IsLockedOut: false });
        var line = Assert.Single(await Book.HistoryAsync(added.Id));
        Assert.Equal(("", "Wilma Sedge may sign in as floor", "starts on Monday"), (line.Before, line.After, line.Why));
    }

    [Fact]
    public async Task A_new_password_ends_the_old_one_and_a_lock_out_ends_both()
    {
        var added = (await Book.AddAsync("Otto Vell", "otto@grindshop.example", Roles.Desk, "helps out", "Owner")).Value!;
        var reset = (await Book.ResetPasswordAsync(added.Id, "forgot it", "Owner")).Value!;

        Assert.False(await SignsInAsync("otto@grindshop.example", added.Password));
        Assert.True(await SignsInAsync("otto@grindshop.example", reset.Password));
        Assert.True((await Book.LockOutAsync(added.Id, "left", "Owner", "me")).Succeeded);
        Assert.False(await SignsInAsync("otto@grindshop.example", reset.Password));
        Assert.True((await Book.LetInAsync(added.Id, "came back", "Owner")).Succeeded);
        Assert.True(await SignsInAsync("otto@grindshop.example", reset.Password));
        Assert.Equal(4, (await Book.HistoryAsync(added.Id)).Count);
    }

    [Fact]
    public async Task The_last_owner_stays_and_nobody_locks_themselves_out()
    {
        var owner = Assert.Single(await Book.AllAsync(), worker => worker.Role == Roles.Owner);

        Assert.Equal("lastOwner", (await Book.LockOutAsync(owner.Id, "try", "Somebody", "other")).Refusal!.Code);
        Assert.Equal("lastOwner", (await Book.ChangeRoleAsync(owner.Id, Roles.Desk, "try", "Somebody", "other")).Refusal!.Code);
        Assert.Equal("own", (await Book.LockOutAsync(owner.Id, "try", owner.Name, owner.Id)).Refusal!.Code);
        Assert.Equal("own", (await Book.ChangeRoleAsync(owner.Id, Roles.Desk, "try", owner.Name, owner.Id)).Refusal!.Code);
    }

    [Fact]
    public async Task Two_owners_who_lock_each_other_out_at_once_leave_one()
    {
        var first = Assert.Single(await Book.AllAsync(), worker => worker.Role == Roles.Owner);
        var second = (await Book.AddAsync("Second Owner", "second@grindshop.example", Roles.Owner, "partner", "Owner")).Value!;

        var both = await Task.WhenAll(Book.LockOutAsync(first.Id, "row", second.Name, second.Id), Book.LockOutAsync(second.Id, "row", first.Name, first.Id));

        var done = Assert.Single(both, outcome => outcome.Succeeded).Value!;
        Assert.Equal("lastOwner", Assert.Single(both, outcome => !outcome.Succeeded).Refusal!.Code);
        await Book.LetInAsync(done.Id, "peace", "Owner");
        await Book.ChangeRoleAsync(second.Id, Roles.Desk, "back to one owner", first.Name, first.Id);
    }

    [Theory]
    [InlineData("", "a@example.com", Roles.Desk, "why", "badName")]
    [InlineData("A", "nobody", Roles.Desk, "why", "badEmail")]
    [InlineData("A", "a@example.com", "King", "why", "badRole")]
    [InlineData("A", "a@example.com", Roles.Desk, " ", "noWhy")]
    [InlineData("A", "owner@grindshop.example", Roles.Desk, "why", "refused")]
    public async Task What_cannot_be_a_person_is_refused(string name, string email, string role, string why, string code) =>
        Assert.Equal(code, (await Book.AddAsync(name, email, role, why, "Owner")).Refusal!.Code);

    [Fact]
    public void Passwords_satisfy_the_rules_and_differ()
    {
        var passwords = Enumerable.Range(0, 200).Select(_ => PeopleBook.Password()).ToList();

        Assert.Distinct(passwords);
        Assert.All(passwords, password => Assert.Matches("^[A-HJ-NP-Z]{4}-[a-km-z]{5}-[2-9]{5}$", password));
    }

    private async Task<bool> SignsInAsync(string user, string password)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<ShopUser>>();
        var person = (await users.FindByNameAsync(user))!;
        return await users.CheckPasswordAsync(person, password) && !await users.IsLockedOutAsync(person);
    }
}
