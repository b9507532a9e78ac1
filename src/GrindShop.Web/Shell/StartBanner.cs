using System.Text.Json;
using GrindShop.Shop.People;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Identity;

namespace GrindShop.Web.Shell;

/// <summary>Tells whoever started the application where it answers and, in the demo scenario, how to sign in.</summary>
internal static class StartBanner
{
    private sealed record DemoPerson(string UserName, string Name, string Role, string Password);

    public static void Print(WebApplication app)
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
        Console.WriteLine($"GrindShop answers at {string.Join(" and ", addresses)}");
        foreach (var person in DemoPeople(app))
            Console.WriteLine($"  {person.Role,-6} {person.UserName,-26} {person.Password}");
        Console.WriteLine("Ctrl-C stops it.");
    }

    /// <summary>The scenario's people whose demo password still works in this database.</summary>
    private static List<DemoPerson> DemoPeople(WebApplication app)
    {
        if (app.Configuration["GRINDSHOP_SEED"] is not { Length: > 0 } folder || !File.Exists(Path.Combine(folder, "people.json")))
            return [];
        using var scope = app.Services.CreateScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<ShopUser>>();
        var people = JsonSerializer.Deserialize<List<DemoPerson>>(File.ReadAllText(Path.Combine(folder, "people.json")), JsonSerializerOptions.Web) ?? [];
        return [.. people.Where(person => Works(users, person))];
    }

    private static bool Works(UserManager<ShopUser> users, DemoPerson person) =>
        users.Users.FirstOrDefault(user => user.UserName == person.UserName) is { PasswordHash: { } hash } user
        && users.PasswordHasher.VerifyHashedPassword(user, hash, person.Password) != PasswordVerificationResult.Failed;
}
