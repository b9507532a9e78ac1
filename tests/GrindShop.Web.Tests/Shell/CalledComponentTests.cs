using Bunit;
using GrindShop.Web.Shell;
using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Tests.Shell;

public sealed class CalledComponentTests
{
    [Fact]
    public async Task Work_that_breaks_while_the_person_is_there_is_shown()
    {
        await using var browser = new BunitContext();
        var page = browser.Render<Page>();

        page.Instance.Call(() => throw new InvalidOperationException("no paper"));

        Assert.Equal("no paper", (await browser.Renderer.UnhandledException).Message);
    }

    [Fact]
    public async Task Work_that_breaks_after_the_person_has_left_ends_quietly()
    {
        await using var browser = new BunitContext();
        var (page, goOn, over) = (browser.Render<Page>().Instance, new TaskCompletionSource(), new TaskCompletionSource());
        page.Call(async () =>
        {
            await goOn.Task;
            over.SetResult();
            throw new InvalidOperationException("no paper");
        });

        await browser.DisposeComponentsAsync();
        goOn.SetResult();

        await over.Task;
        Assert.False(browser.Renderer.UnhandledException.IsCompleted);
    }

    [Fact]
    public async Task Nothing_is_begun_for_a_person_who_has_left()
    {
        await using var browser = new BunitContext();
        var page = browser.Render<Page>().Instance;
        await browser.DisposeComponentsAsync();
        var begun = false;

        page.Call(() =>
        {
            begun = true;
            return Task.CompletedTask;
        });

        Assert.False(begun);
    }

    private sealed class Page : CalledComponent, IDisposable
    {
        public void Call(Func<Task> work) => Do(work);

        public void Dispose() => EndCalls();
    }
}
