namespace GrindShop.Web.Shell;

/// <summary>One question after another, of which only the last is still wanted: asking anew cancels what was asked before.</summary>
public sealed class LatestOnly : IDisposable
{
    private CancellationTokenSource _current = new();

    /// <summary>Stands for the question asked last.</summary>
    public CancellationToken Current => _current.Token;

    public CancellationToken Next()
    {
        Dispose();
        _current = new CancellationTokenSource();
        return _current.Token;
    }

    public void Dispose()
    {
        _current.Cancel();
        _current.Dispose();
    }
}
