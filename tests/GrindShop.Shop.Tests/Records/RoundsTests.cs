using GrindShop.Shop.Records;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace GrindShop.Shop.Tests.Records;

public sealed class RoundsTests
{
    [Fact]
    public async Task A_round_that_breaks_does_not_keep_the_next_from_coming()
    {
        using var rounds = new Counted();
        await rounds.StartAsync(CancellationToken.None);
        await rounds.Begun(1);

        rounds.Later();
        await rounds.Begun(2);

        await rounds.StopAsync(CancellationToken.None);
        Assert.True(rounds.ExecuteTask!.IsCompletedSuccessfully);
    }

    private sealed class Counted(FakeTimeProvider clock) : Rounds(Often, clock, NullLogger.Instance)
    {
        private static readonly TimeSpan Often = TimeSpan.FromHours(1);
        private readonly SemaphoreSlim _begun = new(0);
        private int _rounds;

        public Counted()
            : this(new FakeTimeProvider())
        {
        }

        public void Later() => ((FakeTimeProvider)Clock).Advance(Often);

        public async Task Begun(int round)
        {
            Assert.True(await _begun.WaitAsync(TimeSpan.FromSeconds(30)));
            Assert.Equal(round, _rounds);
        }

        public override void Dispose()
        {
            base.Dispose();
            _begun.Dispose();
        }

        protected override Task RoundAsync(CancellationToken stop)
        {
            _rounds++;
            throw new InvalidOperationException("An exception has been raised that is likely due to a transient failure.");
        }

        protected override async Task PauseAsync(TimeSpan pause, CancellationToken stop)
        {
            var over = base.PauseAsync(pause, stop);
            _begun.Release();
            await over;
        }
    }
}
