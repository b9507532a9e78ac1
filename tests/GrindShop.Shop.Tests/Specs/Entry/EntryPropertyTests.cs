using System.Text;
using CsCheck;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Records;
using GrindShop.Shop.Specs;
using GrindShop.Shop.Specs.Entry;
using GrindShop.Shop.Tests.Demo;

namespace GrindShop.Shop.Tests.Specs.Entry;

public class EntryPropertyTests
{
    private static readonly IReadOnlyList<EngineFamily> Families = SeedFiles.Scenario.Families;

    /// <summary>Pieces that lines are made of, in no sensible order, among them hostile ones.</summary>
    private static readonly Gen<string> Anything = Gen.OneOf(
        Gen.String,
        Gen.OneOf(SpecEntryTests.Written.SelectMany(line => line.Line.Split(' ')).Distinct().ToArray()).Array[0, 40].Select(words => string.Join(' ', words)),
        Gen.OneOf("230", "236", ".355", "/", "@", " ", "lsa", "int", "ex", "in", "-", "+", "1", "\n", ",", "adv", "no", "lash", "rr", "?", "notes:", "use:", "4", "swap", "mm").Array[0, 40].Select(words => string.Concat(words)));

    [Fact]
    public void Nothing_typed_is_dropped() => Anything.Sample(
        line =>
        {
            var read = SpecEntry.Read(line, Families);
            var outside = new StringBuilder(line);
            foreach (var part in read.Parts)
                outside.Remove(part.Start, part.Length).Insert(part.Start, new string(' ', part.Length));

            Assert.Equal(Solid(outside.ToString()), Solid(string.Concat(read.Rest)));
            Assert.All(read.Rest, rest => Assert.Contains(rest, read.Spec.Notes, StringComparison.Ordinal));
        },
        iter: 4000);

    [Fact]
    public void Parts_follow_one_another_without_overlap() => Anything.Sample(
        line =>
        {
            var at = 0;
            foreach (var part in SpecEntry.Read(line, Families).Parts)
            {
                Assert.True(part.Start >= at && part.Length > 0 && part.End <= line.Length, line);
                at = part.End;
            }
        },
        iter: 2000);

    [Fact]
    public void Every_field_filled_is_named_by_a_part() => Anything.Sample(
        line =>
        {
            var read = SpecEntry.Read(line, Families);
            Assert.Equal(Paths(read.Spec with { Notes = null }).Order(), read.Parts.SelectMany(part => part.Fields).Except(["notes"]).Distinct().Order());
        },
        iter: 2000);

    [Fact]
    public void Specification_written_as_a_line_is_read_back_the_same() => Written.Sample(
        spec =>
        {
            var line = EntryWriter.Write(spec);
            var read = SpecEntry.Read(line, Families);
            Assert.Equal(spec, read.Spec);
            Assert.Empty(read.Doubts.Select(doubt => $"{doubt.Question} ({line})"));
        },
        iter: 6000);

    /// <summary>Twice the text takes about twice the steps: the readers look a bounded way ahead, and what is longer than the limit is not read at all.</summary>
    [Theory]
    [InlineData("1-")]
    [InlineData("((((")]
    [InlineData("hyd ")]
    [InlineData("int ")]
    [InlineData("lobe lift at the ")]
    [InlineData("@.050 ")]
    [InlineData("a,a/")]
    public void Endless_text_is_kept_whole_and_read_up_to_the_limit(string piece)
    {
        var line = string.Concat(Enumerable.Repeat(piece, 40_000));
        var read = SpecEntry.Read(line, Families);

        Assert.True(read.Parts.Sum(part => part.Length) <= SpecEntry.LongestRead);
        Assert.Equal(Solid(line).Length, read.Parts.Sum(part => Solid(line.Substring(part.Start, part.Length)).Length) + read.Rest.Sum(rest => Solid(rest).Length));
    }

    private static string Solid(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    private static IEnumerable<string> Paths(CamSpec spec)
    {
        using var json = System.Text.Json.JsonSerializer.SerializeToDocument(spec, ShopJson.Options);
        return [.. json.RootElement.EnumerateObject().SelectMany(field => field.Name is "intake" or "exhaust"
            ? field.Value.EnumerateObject().Select(inner => $"{field.Name}.{inner.Name}")
            : [field.Name])];
    }

    private static Gen<CamSpec> Written =>
        from numbers in NumberField.All.Aggregate(Gen.Const(new CamSpec()), (specs, one) => from spec in specs from value in Number(one) select one.With(spec, value))
        from family in Gen.OneOf(Families.Select(family => family.Code).Prepend(null).ToArray())
        from side in Gen.OneOf<CamSide?>(null, CamSide.Left, CamSide.Right)
        from lifter in Gen.OneOf<LifterType?>(null, LifterType.HydraulicRoller, LifterType.SolidRoller, LifterType.HydraulicFlat, LifterType.SolidFlat)
        from gear in Gen.OneOf<DistributorGear?>(null, DistributorGear.Iron, DistributorGear.NitrocarburizedSteel, DistributorGear.Bronze, DistributorGear.PolymerComposite)
        from pump in Gen.OneOf<bool?>(null, true, false)
        from order in Gen.OneOf(Families.Select(family => family.FiringOrder).Prepend(null).ToArray())
        from use in Gen.OneOf(null, "street, towing a boat", "a 230/236 one", "drag", "9.0 mm")
        from notes in Gen.OneOf(null, "call back after 5", "230/236 @.050\nuse: as before", "';--", "½ 🏁")
        select numbers with { EngineFamily = family, Side = side, Lifter = lifter, DistributorGear = gear, MechanicalFuelPump = pump, FiringOrder = order, Use = use, Notes = notes };

    /// <summary>Every figure in its range, to the tenth of a thousandth or the hundredth of a degree.</summary>
    private static Gen<double?> Number(NumberField field) => Gen.Frequency(
        (1, Gen.Const((double?)null)),
        (2, Gen.Double[field.Range.Least, field.Range.Most].Select(value => (double?)Math.Clamp(Math.Round(value, field.Range == FieldRange.Advance ? 1 : field.Range.Most > 20 ? 2 : 4), field.Range.Least, field.Range.Most))));
}
