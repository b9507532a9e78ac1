using Microsoft.AspNetCore.Components;

namespace GrindShop.Web.Shell;

/// <summary>
/// A component that something outside of it calls: a notice, a clock, the address bar. A call may come when the person has just left; then nothing is
/// done, and whatever goes wrong in such work ends with the page, never with the web server.
/// </summary>
public abstract class CalledComponent : ComponentBase
{
    /// <summary>Set when the person has left the page.</summary>
    protected bool HasLeft { get; private set; }

    protected void EndCalls() => HasLeft = true;

    /// <summary>Does the work on the page's own thread. Returns at once.</summary>
    protected async void Do(Func<Task> work)
    {
        try
        {
            await InvokeAsync(() => HasLeft ? Task.CompletedTask : work());
        }
        catch (OperationCanceledException)
        {
            // Something newer was asked in the meantime, or nobody is there any more.
        }
        catch (Exception error)
        {
            await TellAsync(error);
        }
    }

    /// <summary>The page shows that something broke, if it is still there to show it.</summary>
    private async Task TellAsync(Exception error)
    {
        if (HasLeft)
            return;
        try
        {
            await DispatchExceptionAsync(error);
        }
        catch (Exception gone) when (gone is ObjectDisposedException or InvalidOperationException or ArgumentException)
        {
            // The page went away while it was being told.
        }
    }
}
