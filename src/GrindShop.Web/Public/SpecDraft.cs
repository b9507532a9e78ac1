using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Web.Public;

/// <summary>A specification while it is being typed: the text of every field, exactly as it stands there, by the field's path.</summary>
public sealed class SpecDraft
{
    public const string Yes = "yes", No = "no";

    public SpecDraft() => Texts = [];

    /// <summary>Continues with texts that were kept.</summary>
    public SpecDraft(Dictionary<string, string> texts) => Texts = texts;

    /// <summary>The texts by path; what has to be kept so that nothing typed is lost.</summary>
    public Dictionary<string, string> Texts { get; }

    public string this[string path]
    {
        get => Texts.GetValueOrDefault(path, "");
        set => Texts[path] = value;
    }

    /// <summary>A specification that is there already, to be corrected.</summary>
    public static SpecDraft Of(CamSpec spec)
    {
        var draft = new SpecDraft
        {
            ["engineFamily"] = spec.EngineFamily ?? "",
            ["side"] = spec.Side?.ToString() ?? "",
            ["lifter"] = spec.Lifter?.ToString() ?? "",
            ["distributorGear"] = spec.DistributorGear?.ToString() ?? "",
            ["mechanicalFuelPump"] = spec.MechanicalFuelPump switch { true => Yes, false => No, _ => "" },
            ["firingOrder"] = spec.FiringOrder ?? "",
            ["use"] = spec.Use ?? "",
            ["notes"] = spec.Notes ?? "",
        };
        foreach (var field in NumberField.All)
            draft[field.Path] = NumberText.Write(field.Get(spec));
        return draft;
    }

    /// <summary>What was typed as a specification. A number that cannot be read is left out; <see cref="Unreadable"/> tells which.</summary>
    public CamSpec ToSpec()
    {
        var spec = new CamSpec
        {
            EngineFamily = Text("engineFamily"),
            Side = Choice<CamSide>("side"),
            Lifter = Choice<LifterType>("lifter"),
            DistributorGear = Choice<DistributorGear>("distributorGear"),
            MechanicalFuelPump = this["mechanicalFuelPump"] switch { Yes => true, No => false, _ => null },
            FiringOrder = Text("firingOrder"),
            Use = Text("use"),
            Notes = Text("notes"),
        };
        return NumberField.All.Aggregate(spec, (whole, field) => field.Set(whole, Number(field)));
    }

    public IEnumerable<FieldProblem> Unreadable() =>
        from field in NumberField.All
        where !NumberText.TryRead(this[field.Path], out _)
        select new FieldProblem(field.Path, $"\"{this[field.Path].Trim()}\" is not a number. {field.Range.Sentence}", field.Range.Least, field.Range.Most);

    /// <summary>The text without the blanks around it; null where there is none.</summary>
    public string? Text(string path) => string.IsNullOrWhiteSpace(this[path]) ? null : this[path].Trim();

    private double? Number(NumberField field) => NumberText.TryRead(this[field.Path], out var value) ? value : null;

    private T? Choice<T>(string path)
        where T : struct, Enum => Enum.TryParse<T>(this[path], out var value) && Enum.IsDefined(value) ? value : null;
}
