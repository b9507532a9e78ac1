using GrindShop.Shop.People;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Identity;

namespace GrindShop.Web.Security;

public sealed partial class SignIn
{
    private string? _problem;

    [Inject]
    private SignInManager<ShopUser> Manager { get; set; } = default!;

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    [SupplyParameterFromForm]
    private SignInInput Input { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "returnUrl")]
    private string? ReturnUrl { get; set; }

    protected override void OnInitialized() => Input ??= new SignInInput();

    private async Task EnterAsync()
    {
        var result = await Manager.PasswordSignInAsync(Input.User?.Trim() ?? "", Input.Password ?? "", isPersistent: true, lockoutOnFailure: true);
        if (result.Succeeded)
            Navigation.NavigateTo(SafeReturn(ReturnUrl));
        else
            _problem = result.IsLockedOut ? "Too many wrong passwords. Wait five minutes, then try again." : "This address and password do not belong together.";
    }

    /// <summary>Only ever back into this application.</summary>
    private static string SafeReturn(string? url) => url is ['/', not ('/' or '\\'), ..] ? url : "/start";
}

public sealed class SignInInput
{
    public string? User { get; set; }

    public string? Password { get; set; }
}
