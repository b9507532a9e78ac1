using System.Net.Mail;
using System.Security.Cryptography;
using GrindShop.Shop;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace GrindShop.Web.Settings;

/// <summary>Somebody who works in the shop, as the owner sees them.</summary>
public sealed record Worker(string Id, string Name, string Email, string Role, bool IsLockedOut);

/// <summary>A person and the password that is shown this once.</summary>
public sealed record NewPassword(string Id, string Name, string Password);

/// <summary>Who may sign in. Acts are done one at a time, so that two owners cannot remove each other at once; each is a line of the history.</summary>
public sealed class PeopleBook(IServiceScopeFactory scopes, TimeProvider clock)
{
    public const string KeyStart = "people/";

    private const string Capitals = "ABCDEFGHJKLMNPQRSTUVWXYZ", Smalls = "abcdefghijkmnopqrstuvwxyz", Digits = "23456789";

    public async Task<IReadOnlyList<Worker>> AllAsync(CancellationToken cancel = default)
    {
        await using var scope = scopes.CreateAsyncScope();
        return await AllAsync(scope.ServiceProvider.GetRequiredService<ShopDb>(), cancel);
    }

    public async Task<IReadOnlyList<RuleChange>> HistoryAsync(string id, CancellationToken cancel = default)
    {
        await using var scope = scopes.CreateAsyncScope();
        return await scope.ServiceProvider.GetRequiredService<ShopDb>().HistoryAsync(KeyStart + id, cancel: cancel);
    }

    public Task<Outcome<NewPassword>> AddAsync(string name, string email, string role, string why, string by) => ActAsync<NewPassword>(why, async act =>
    {
        if (Check(name, email, role) is { } wrong)
            return wrong;
        var user = new ShopUser { UserName = email.Trim(), Email = email.Trim(), EmailConfirmed = true, LockoutEnabled = true, DisplayName = name.Trim() };
        var password = Password();
        if (await act.TryAsync(() => act.Users.CreateAsync(user, password)) is { } refused)
            return refused;
        await EnsureRoleAsync(act, role);
        await act.Users.AddToRoleAsync(user, role);
        act.Note(user, "", $"{user.DisplayName} may sign in as {role.ToLowerInvariant()}", why, by);
        return new NewPassword(user.Id, user.DisplayName, password);
    });

    public Task<Outcome<Worker>> ChangeRoleAsync(string id, string role, string why, string by, string byId) => OnAsync<Worker>(id, why, async (act, user, worker) =>
    {
        if (id == byId)
            return new Refusal("own", "Another owner changes your own work.");
        if (!Roles.All.Contains(role) || role == worker.Role)
            return new Refusal("unchanged", "Choose another kind of work.");
        if (IsLastOwner(await AllAsync(act.Db, default), worker))
            return LastOwner;
        await act.Users.RemoveFromRolesAsync(user, await act.Users.GetRolesAsync(user));
        await EnsureRoleAsync(act, role);
        await act.Users.AddToRoleAsync(user, role);
        await act.Users.UpdateSecurityStampAsync(user);
        act.Note(user, worker.Role.ToLowerInvariant(), role.ToLowerInvariant(), why, by);
        return worker with { Role = role };
    });

    public Task<Outcome<NewPassword>> ResetPasswordAsync(string id, string why, string by) => OnAsync<NewPassword>(id, why, async (act, user, _) =>
    {
        var password = Password();
        user.PasswordHash = act.Users.PasswordHasher.HashPassword(user, password);
        await act.Users.UpdateSecurityStampAsync(user);
        act.Note(user, "old password", "new password", why, by);
        return new NewPassword(user.Id, user.DisplayName, password);
    });

    public Task<Outcome<Worker>> LockOutAsync(string id, string why, string by, string byId) => OnAsync<Worker>(id, why, async (act, user, worker) =>
    {
        if (id == byId)
            return new Refusal("own", "Nobody locks themselves out: another owner does that.");
        if (IsLastOwner(await AllAsync(act.Db, default), worker))
            return LastOwner;
        if (worker.IsLockedOut)
            return new Refusal("unchanged", $"{worker.Name} is locked out already.");
        await act.Users.SetLockoutEnabledAsync(user, true);
        await act.Users.SetLockoutEndDateAsync(user, DateTimeOffset.MaxValue);
        await act.Users.UpdateSecurityStampAsync(user);
        act.Note(user, "may sign in", "locked out", why, by);
        return worker with { IsLockedOut = true };
    });

    public Task<Outcome<Worker>> LetInAsync(string id, string why, string by) => OnAsync<Worker>(id, why, async (act, user, worker) =>
    {
        if (!worker.IsLockedOut)
            return new Refusal("unchanged", $"{worker.Name} may sign in already.");
        await act.Users.SetLockoutEndDateAsync(user, null);
        act.Note(user, "locked out", "may sign in", why, by);
        return worker with { IsLockedOut = false };
    });

    private static readonly Refusal LastOwner = new("lastOwner", "This is the last owner who can sign in: make somebody else an owner first.");

    /// <summary>Three groups of letters and digits that are not mistaken for one another.</summary>
    public static string Password() =>
        $"{RandomNumberGenerator.GetString(Capitals, 4)}-{RandomNumberGenerator.GetString(Smalls, 5)}-{RandomNumberGenerator.GetString(Digits, 5)}";

    private static bool IsLastOwner(IReadOnlyList<Worker> people, Worker worker) =>
        worker is { Role: Roles.Owner, IsLockedOut: false } && !people.Any(other => other.Id != worker.Id && other is { Role: Roles.Owner, IsLockedOut: false });

    private static Refusal? Check(string name, string email, string role)
    {
        if (string.IsNullOrWhiteSpace(name) || name.Trim().Length > 60 || name.Any(char.IsControl))
            return new Refusal("badName", "Give the name that stands in histories and on papers, at most 60 characters.");
        if (email.Trim().Length > 200 || !MailAddress.TryCreate(email.Trim(), out var address) || address.Address != email.Trim())
            return new Refusal("badEmail", "This is not an e-mail address; one looks like name@example.com.");
        return Roles.All.Contains(role) ? null : new Refusal("badRole", "Choose what the person is to do.");
    }

    private static async Task EnsureRoleAsync(PeopleAct act, string role)
    {
        if (!await act.Db.Roles.AnyAsync(known => known.Name == role))
            act.Db.Roles.Add(new IdentityRole(role) { NormalizedName = role.ToUpperInvariant() });
        await act.Db.SaveChangesAsync();
    }

    private static async Task<IReadOnlyList<Worker>> AllAsync(ShopDb db, CancellationToken cancel)
    {
        var rows = await (from user in db.Users
                          join held in db.UserRoles on user.Id equals held.UserId into all
                          from held in all.DefaultIfEmpty()
                          join role in db.Roles on held.RoleId equals role.Id into named
                          from role in named.DefaultIfEmpty()
                          orderby user.DisplayName
                          select new { user.Id, user.DisplayName, user.Email, Role = role.Name, user.LockoutEnd }).AsNoTracking().ToListAsync(cancel);
        return [.. rows.Select(row => new Worker(row.Id, row.DisplayName, row.Email ?? "", row.Role ?? "none", row.LockoutEnd is { Year: > 9000 }))];
    }

    private Task<Outcome<T>> OnAsync<T>(string id, string why, Func<PeopleAct, ShopUser, Worker, Task<Outcome<T>>> change) => ActAsync(why, async act =>
        await act.Users.FindByIdAsync(id) is { } user && (await AllAsync(act.Db, default)).FirstOrDefault(worker => worker.Id == id) is { } worker
            ? await change(act, user, worker)
            : new Refusal("unknown", "There is no such person."));

    private async Task<Outcome<T>> ActAsync<T>(string why, Func<PeopleAct, Task<Outcome<T>>> change)
    {
        if (string.IsNullOrWhiteSpace(why) || why.Length > ChangeBook.LongestWhy)
            return new Refusal("noWhy", "Say why; it stays in the history.");
        await using var scope = scopes.CreateAsyncScope();
        var act = new PeopleAct(scope.ServiceProvider.GetRequiredService<ShopDb>(), scope.ServiceProvider.GetRequiredService<UserManager<ShopUser>>(), clock.GetUtcNow());
        await using var transaction = await act.Db.Database.BeginTransactionAsync();
        await act.Db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({Turn.People})");
        var outcome = await change(act);
        if (!outcome.Succeeded)
            return outcome;
        await act.Db.SaveChangesAsync();
        await transaction.CommitAsync();
        return outcome;
    }
}

/// <summary>One act on a person, in its transaction.</summary>
internal sealed record PeopleAct(ShopDb Db, UserManager<ShopUser> Users, DateTimeOffset At)
{
    public void Note(ShopUser user, string before, string after, string why, string by) =>
        Db.Add(new RuleChange(PeopleBook.KeyStart + user.Id, user.DisplayName, before, after, why.Trim(), by, At));

    /// <summary>Null where it was done; otherwise what Identity has against it.</summary>
    public async Task<Refusal?> TryAsync(Func<Task<IdentityResult>> act) =>
        await act() is { Succeeded: false } result ? new Refusal("refused", string.Join(' ', result.Errors.Select(error => error.Description))) : null;
}
