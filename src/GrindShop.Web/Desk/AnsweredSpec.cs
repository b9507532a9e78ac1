using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using GrindShop.Web.Public;

namespace GrindShop.Web.Desk;

/// <summary>A cam's specification with the customer's last answers written into it.</summary>
public static class AnsweredSpec
{
    public static CamSpec Of(OrderCam cam, IEnumerable<Question> questions)
    {
        var draft = SpecDraft.Of(cam.Spec);
        foreach (var (field, value) in Answers(cam, questions))
            draft[field] = value;
        return draft.ToSpec();
    }

    /// <summary>Of several questions about one field the one that was answered last counts.</summary>
    private static IEnumerable<(string Field, string Value)> Answers(OrderCam cam, IEnumerable<Question> questions) =>
        from question in questions
        where question.Cam == cam.Ordinal && question.Field is not null
        let last = question.LastReply
        where last?.Value is not null
        orderby last.At
        select (question.Field, last.Value);
}
