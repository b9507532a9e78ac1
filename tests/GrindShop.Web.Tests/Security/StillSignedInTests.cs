using System.Reflection;
using System.Security.Claims;
using GrindShop.Shop.People;
using GrindShop.Web.Settings;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace GrindShop.Web.Tests.Security;

/// <summary>An open page ends once its person's password, work or right to sign in has changed.</summary>
public sealed class StillSignedInTests(ShopApp app) : IClassFixture<ShopApp>
{
    private PeopleBook Book => app.Services.GetRequiredService<PeopleBook>();

    [Fact]
    public async Task A_page_stays_open_until_its_person_is_changed()
    {
        var person = (await Book.AddAsync("Wilma Sedge", "wilma@grindshop.example", Roles.Floor, "starts on Monday", "Owner")).Value!;
        var page = await OpenAsync(person.Id);

        Assert.True(await IsStillAsync(page));
        Assert.True((await Book.ChangeRoleAsync(person.Id, Roles.Desk, "moves to the desk", "Owner", "me")).Succeeded);
        Assert.False(await IsStillAsync(page));

        var anew = await OpenAsync(person.Id);
        Assert.True(await IsStillAsync(anew));
        Assert.True((await Book.ResetPasswordAsync(person.Id, "forgot it", "Owner")).Succeeded);
        Assert.False(await IsStillAsync(anew));

        var last = await OpenAsync(person.Id);
        Assert.True((await Book.LockOutAsync(person.Id, "left", "Owner", "me")).Succeeded);
        Assert.False(await IsStillAsync(last));
    }

    [Fact]
    public async Task Somebody_whom_the_shop_does_not_know_is_not_signed_in() =>
        Assert.False(await IsStillAsync(new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.NameIdentifier, Guid.NewGuid().ToString())], "cookie"))));

    /// <summary>The sign-in that a page opened now goes by.</summary>
    private async Task<ClaimsPrincipal> OpenAsync(string id)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var user = await scope.ServiceProvider.GetRequiredService<UserManager<ShopUser>>().FindByIdAsync(id);
        return await scope.ServiceProvider.GetRequiredService<IUserClaimsPrincipalFactory<ShopUser>>().CreateAsync(user!);
    }

    /// <summary>What the provider of the open pages asks itself every minute.</summary>
    private async Task<bool> IsStillAsync(ClaimsPrincipal person)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var provider = Assert.IsAssignableFrom<RevalidatingServerAuthenticationStateProvider>(scope.ServiceProvider.GetRequiredService<AuthenticationStateProvider>());
        var ask = provider.GetType().GetMethod("ValidateAuthenticationStateAsync", BindingFlags.Instance | BindingFlags.NonPublic)!;
        return await (Task<bool>)ask.Invoke(provider, [new AuthenticationState(person), CancellationToken.None])!;
    }
}
