using Bunit;
using GrindShop.Web.Office;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace GrindShop.Web.Tests.Office;

public sealed class FileFieldTests
{
    [Fact]
    public async Task A_file_can_be_chosen_once_the_browser_listens_and_not_before()
    {
        var page = new SlowPage();
        await using var browser = new BunitContext();
        browser.Services.AddSingleton<IJSRuntime>(page);
        var field = browser.Render<FileField>(parameters => parameters.AddUnmatched("id", "picture").AddUnmatched("accept", ".png"));
        Assert.Equal("Blazor._internal.InputFile.init", page.Asked);
        Assert.True(field.Find("#picture").HasAttribute("disabled"));

        page.Listens.SetResult();

        field.WaitForAssertion(() => Assert.False(field.Find("#picture").HasAttribute("disabled")), TimeSpan.FromSeconds(30));
        Assert.Equal(".png", field.Find("#picture").GetAttribute("accept"));
    }

    /// <summary>A browser that takes its time.</summary>
    private sealed class SlowPage : IJSRuntime
    {
        public TaskCompletionSource Listens { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public string? Asked { get; private set; }

        public ValueTask<TValue> InvokeAsync<TValue>(string identifier, object?[]? args) => InvokeAsync<TValue>(identifier, default, args);

        public async ValueTask<TValue> InvokeAsync<TValue>(string identifier, CancellationToken cancellationToken, object?[]? args)
        {
            Asked = identifier;
            await Listens.Task;
            return default!;
        }
    }
}
