using MudBlazor;

namespace GrindShop.Web.Shell;

/// <summary>The shop's one look, light and dark. Every text colour has at least 4.5 : 1 on its ground.</summary>
public static class ShopTheme
{
    private static readonly string[] Fonts = ["system-ui", "Segoe UI", "Liberation Sans", "Helvetica", "Arial", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#15616d",
            PrimaryContrastText = "#ffffff",
            Secondary = "#8a3f10",
            SecondaryContrastText = "#ffffff",
            Background = "#f6f5f1",
            Surface = "#ffffff",
            TextPrimary = "#1c2224",
            TextSecondary = "#4a5559",
            Success = "#1d6b3a",
            SuccessContrastText = "#ffffff",
            Warning = "#8a5a00",
            WarningContrastText = "#ffffff",
            Error = "#a4262c",
            ErrorContrastText = "#ffffff",
            Info = "#1f5f99",
            InfoContrastText = "#ffffff",
            LinesDefault = "#d5d3ca",
            TableLines = "#d5d3ca",
            LinesInputs = "#6c777b",
            Divider = "#d5d3ca",
            ActionDefault = "#4a5559",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#6cc5cf",
            PrimaryContrastText = "#062a2f",
            Secondary = "#f0a36b",
            SecondaryContrastText = "#2f1402",
            Background = "#14191b",
            Surface = "#1d2427",
            TextPrimary = "#edf1f1",
            TextSecondary = "#b4c0c3",
            Success = "#7fd09b",
            SuccessContrastText = "#06240f",
            Warning = "#f0c060",
            WarningContrastText = "#2b1d00",
            Error = "#ff9d97",
            ErrorContrastText = "#380407",
            Info = "#8cc4ff",
            InfoContrastText = "#04223f",
            LinesDefault = "#3a4448",
            TableLines = "#3a4448",
            LinesInputs = "#8f9ca0",
            Divider = "#3a4448",
            ActionDefault = "#b4c0c3",
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "4px" },
        Typography = new Typography { Default = new DefaultTypography { FontFamily = Fonts, FontSize = "1rem", LineHeight = "1.5" } },
    };
}
