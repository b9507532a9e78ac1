using GrindShop.Shop.Engines;
using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

/// <summary>What to ask the customer about a cam, by the work that is to be done to it. Pure.</summary>
public static class WorkQuestions
{
    public static IReadOnlyList<SpecQuestion> Of(CamEntry cam, EngineFamily? family) => cam.Kind switch
    {
        WorkKind.NewGrind => SpecQuestions.Of(cam.Spec, family),
        WorkKind.Regrind => [.. Condition(cam, "How does the used cam look: wear, pits, journals, its gear?"), .. SpecQuestions.Of(cam.Spec, family)],
        _ => [.. SpecQuestions.Of(cam.Spec, family).Where(question => question.Field is "engineFamily" or "side" or "distributorGear"), .. Gear(cam)],
    };

    private static IEnumerable<SpecQuestion> Gear(CamEntry cam)
    {
        if (string.IsNullOrWhiteSpace(cam.Gear?.Marks))
            yield return new SpecQuestion("marks", QuestionKind.Missing, "What is stamped or cast on the cam?");
        foreach (var question in Condition(cam, "How do the gear and the rest of the cam look: teeth, lobes, journals?"))
            yield return question;
    }

    private static IEnumerable<SpecQuestion> Condition(CamEntry cam, string text) =>
        string.IsNullOrWhiteSpace(cam.ReceivedCondition) ? [new SpecQuestion("condition", QuestionKind.Missing, text)] : [];
}
