namespace GrindShop.Web.Public;

/// <summary>How a field of a draft is named where two drafts are compared.</summary>
public static class DraftWords
{
    private static readonly Dictionary<string, string> Names = new()
    {
        ["engineFamily"] = "Engine family",
        ["side"] = "Side",
        ["lifter"] = "Lifter",
        ["distributorGear"] = "Distributor gear",
        ["firingOrder"] = "Firing order",
        ["use"] = "Use",
        ["notes"] = "Notes",
        ["contact.name"] = "Name",
        ["contact.email"] = "E-mail",
        ["contact.phone"] = "Phone",
        ["customerReference"] = "Your reference",
        [StartReading.Use] = "Use (guided)",
        [StartReading.Displacement] = "Displacement",
        [StartReading.Unit] = "Displacement counted in",
        [StartReading.From] = "Pulls from",
        [StartReading.To] = "Pulls up to",
        [StartReading.Idle] = "Idle",
        [StartReading.Taken] = "Starting figures taken",
        [SpecForm.Explained] = "Explanations shown",
    };

    public static string NameOf(string path) =>
        NumberField.All.FirstOrDefault(field => field.Path == path)?.Label ?? Names.GetValueOrDefault(path, path);
}
