namespace GrindShop.Web.Shell;

/// <summary>Light or dark, for one person's visit.</summary>
public sealed class ThemeChoice
{
    public bool IsDark { get; set; }
}
