using GrindShop.Web.Shell;

namespace GrindShop.Web.Tests.Shell;

/// <summary>What is read beside an act is never shown over what the act has read.</summary>
public sealed class OneHandTests
{
    private readonly OneHand _hand = new();

    [Fact]
    public async Task Reading_that_ends_while_an_act_runs_is_not_shown()
    {
        var act = new TaskCompletionSource<string>();
        var acting = _hand.ActAsync(() => act.Task);
        Assert.False((await _hand.ReadAsync(() => Task.FromResult("the act's own change"))).IsToShow);
        act.SetResult("done");
        Assert.Equal("done", await acting);
        Assert.Equal((true, "now"), await _hand.ReadAsync(() => Task.FromResult("now")));
    }

    [Fact]
    public async Task Reading_that_was_begun_before_an_act_and_ends_after_it_reads_once_more()
    {
        var first = new TaskCompletionSource<string>();
        var reads = 0;
        var reading = _hand.ReadAsync(() => reads++ == 0 ? first.Task : Task.FromResult("newer"));
        await _hand.ActAsync(() => Task.FromResult(true));
        first.SetResult("older than the act");
        Assert.Equal((true, "newer"), await reading);
        Assert.Equal(2, reads);
    }

    [Fact]
    public async Task Act_that_fails_holds_no_reading_back()
    {
        await Assert.ThrowsAsync<InvalidOperationException>(() => _hand.ActAsync<int>(() => throw new InvalidOperationException()));
        Assert.True((await _hand.ReadAsync(() => Task.FromResult(1))).IsToShow);
    }
}
