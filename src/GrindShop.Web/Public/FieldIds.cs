using System.Text.RegularExpressions;

namespace GrindShop.Web.Public;

/// <summary>The id of the input that stands for a path of the specification: "intake.lobeLiftIn" is "intake-lobe-lift", "contact.email" is "contact-email".</summary>
public static partial class FieldIds
{
    private static readonly Dictionary<string, string> Numbers = NumberField.All.ToDictionary(field => field.Path, field => field.Id);

    public static string Of(string path) => Numbers.GetValueOrDefault(path) ?? Humps().Replace(path, "-$1").Replace('.', '-').ToLowerInvariant();

    [GeneratedRegex("(?<=[a-z])([A-Z])")]
    private static partial Regex Humps();
}
