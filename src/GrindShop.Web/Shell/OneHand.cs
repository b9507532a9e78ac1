namespace GrindShop.Web.Shell;

/// <summary>
/// The acts of one screen, and the readings that run beside them because somebody changed something. A reading that ran while an act did may be older than
/// the act, or show the act itself as news: it is not shown, as the act reads for itself when it is done.
/// </summary>
public sealed class OneHand
{
    private int _acts;
    private bool _isActing;

    public async Task<T> ActAsync<T>(Func<Task<T>> act)
    {
        _acts++;
        _isActing = true;
        try
        {
            return await act();
        }
        finally
        {
            _isActing = false;
        }
    }

    /// <summary>What is there now; not to be shown while an act runs.</summary>
    public async Task<(bool IsToShow, T Found)> ReadAsync<T>(Func<Task<T>> read)
    {
        while (true)
        {
            var before = _acts;
            var found = await read();
            if (_isActing || before == _acts)
                return (!_isActing, found);
        }
    }
}
