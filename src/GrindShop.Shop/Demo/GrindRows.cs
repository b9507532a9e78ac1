using GrindShop.Shop.Engines;
using GrindShop.Shop.Grinds;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Starting;

namespace GrindShop.Shop.Demo;

/// <summary>Reads grinds.csv, and checks it and start-rules.json as the shop would check them.</summary>
internal static class GrindRows
{
    public static IEnumerable<ScenarioGrind> Read(SeedFolder folder, IReadOnlyDictionary<string, EngineFamily> families)
    {
        foreach (var row in folder.Rows("grinds.csv"))
        {
            row.Text("engineFamily");
            if (row.Known("engineFamily", families) is not { } family)
                continue;
            var grind = new ScenarioGrind(row.Text("code"), family, Entry(row, family));
            foreach (var problem in grind.Entry.Problems(family))
                row.Wrong(problem.Field, problem.Message);
            yield return grind;
        }
    }

    public static void CheckRules(SeedFolder folder, StartRules? rules, IReadOnlyDictionary<string, EngineFamily> families)
    {
        foreach (var problem in rules is null ? [] : StartRuleCheck.Problems(rules))
            folder.Wrong("start-rules.json", "rules", problem.Field, problem.Message);
        foreach (var row in rules?.Families.Where(row => !families.ContainsKey(row.EngineFamily)) ?? [])
            folder.Wrong("start-rules.json", row.EngineFamily, "engineFamily", "This family is not known.");
    }

    private static GrindEntry Entry(CsvRow row, EngineFamily family) => new()
    {
        Name = row.Text("name"),
        Use = row.Choice<StartUse>("use"),
        Summary = row.Text("summary"),
        Spec = new CamSpec
        {
            EngineFamily = family.Code,
            Lifter = row.Choice<LifterType>("lifter"),
            Intake = Lobe(row, "intake"),
            Exhaust = Lobe(row, "exhaust"),
            LobeSeparationCamDeg = row.Number("lobeSeparationCamDeg"),
            IntakeCenterlineCrankDeg = row.Number("intakeCenterlineCrankDeg"),
        },
    };

    private static LobeWish Lobe(CsvRow row, string name) => new()
    {
        DurationAt050CrankDeg = row.Number($"{name}DurationAt050CrankDeg"),
        LobeLiftIn = row.Number($"{name}LobeLiftIn"),
    };
}
