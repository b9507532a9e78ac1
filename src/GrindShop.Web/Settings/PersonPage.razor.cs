using System.Security.Claims;
using GrindShop.Shop;
using GrindShop.Shop.People;
using GrindShop.Shop.Records;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;

namespace GrindShop.Web.Settings;

/// <summary>One person: their work, a new password, locked out or let in.</summary>
public sealed partial class PersonPage : LivePage
{
    private Worker? _worker;
    private IReadOnlyList<RuleChange> _history = [];
    private string _role = Roles.Desk, _why = "";
    private NewPassword? _new;
    private Refusal? _refusal;
    private string? _said;
    private bool _looked, _busy;

    [Parameter]
    public string Id { get; set; } = "";

    [Inject]
    private PeopleBook Book { get; set; } = default!;

    [CascadingParameter]
    private Task<AuthenticationState> Me { get; set; } = default!;

    protected override async Task ReadAsync()
    {
        var before = _worker;
        _worker = (await Book.AllAsync()).FirstOrDefault(worker => worker.Id == Id);
        _history = await Book.HistoryAsync(Id);
        if (_worker is not null && _worker.Role != before?.Role)
            _role = _worker.Role;
        _looked = true;
    }

    private Task ChangeRoleAsync() => ActAsync(async (by, byId) => await Book.ChangeRoleAsync(Id, _role, _why, by, byId), "The work is changed.");

    private Task LockOutAsync() => ActAsync(async (by, byId) => await Book.LockOutAsync(Id, _why, by, byId), "Locked out.");

    private Task LetInAsync() => ActAsync(async (by, _) => await Book.LetInAsync(Id, _why, by), "May sign in again.");

    private Task ResetAsync() => ActAsync(
        async (by, _) =>
        {
            var reset = await Book.ResetPasswordAsync(Id, _why, by);
            _new = reset.Value;
            return reset;
        },
        "The old password no longer works.");

    private async Task ActAsync<T>(Func<string, string, Task<Outcome<T>>> act, string done)
    {
        if (_busy)
            return;
        (_busy, _new) = (true, null);
        var byId = (await Me).User.FindFirstValue(ClaimTypes.NameIdentifier) ?? "";
        var outcome = await act(await SignsAsAsync(), byId);
        (_refusal, _said) = (outcome.Refusal, outcome.Succeeded ? done : null);
        if (outcome.Succeeded)
            _why = "";
        await ReadAsync();
        _busy = false;
    }
}
