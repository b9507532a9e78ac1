using GrindShop.Shop.Specs;

namespace GrindShop.Shop.Orders;

public sealed partial class Order
{
    /// <summary>Questions sent together.</summary>
    public const int MostQuestions = 20;

    private readonly List<Question> _questions = [];

    /// <summary>What the customer was asked, oldest first.</summary>
    public IReadOnlyList<Question> Questions => [.. _questions.OrderBy(question => question.At).ThenBy(question => question.Id)];

    /// <summary>Asks the customer; the order waits for the answers. The same key a second time changes nothing.</summary>
    public Outcome<Order> Ask(IReadOnlyList<QuestionEntry> entries, string by, DateTimeOffset at, string commandKey)
    {
        if (_questions.Exists(question => question.CommandKey == commandKey))
            return this;
        if (entries.Count is 0 or > MostQuestions)
            return new Refusal("noQuestion", $"Choose 1 to {MostQuestions} questions to send.");
        if (entries.FirstOrDefault(entry => Cam(entry.Cam) is null) is { } lost)
            return NoSuchCam(lost.Cam);
        if (entries.Select(Problem).FirstOrDefault(problem => problem is not null) is { } problem)
            return new Refusal("badQuestion", problem.Message);
        var asked = AskCustomer(entries.Count == 1 ? Words(entries[0]) : $"{entries.Count} questions: {string.Join(" / ", entries.Select(Words))}", by, at);
        if (asked.Succeeded)
            _questions.AddRange(entries.Select(entry => new Question(entry.Cam, entry.Field, entry.Text.Trim(), by, at, commandKey)));
        return asked;
    }

    /// <summary>
    /// Keeps what the customer answered, beside any earlier answer; an order that waited for it goes back to the desk. The same key a second time changes nothing.
    /// </summary>
    public Outcome<Order> Reply(IReadOnlyList<ReplyEntry> entries, string by, DateTimeOffset at, string commandKey)
    {
        var given = entries.Where(entry => !entry.IsBlank).ToList();
        if (_questions.Exists(question => question.Replies.Any(reply => reply.CommandKey == commandKey)))
            return this;
        if (given.Count == 0)
            return new Refusal("noAnswer", "Answer at least one question first.");
        if (!IsOpen && State != OrderState.Expired)
            return NotNow("answered");
        if (given.Exists(entry => !_questions.Exists(question => question.Id == entry.QuestionId)))
            return new Refusal("noSuchQuestion", "The shop has not asked this. Load the page again.");
        if (given.Select(Problem).FirstOrDefault(problem => problem is not null) is { } problem)
            return new Refusal("badAnswer", problem.Message);
        given.ForEach(entry => _questions.Find(question => question.Id == entry.QuestionId)!.Add(new Reply(Tidy(entry.Value), Tidy(entry.Words), by, at, commandKey)));
        return Replied(given.Count, by, at);
    }

    /// <summary>Answers that come late are told to the desk all the same.</summary>
    private Order Replied(int count, string by, DateTimeOffset at)
    {
        var what = $"Answered {(count == 1 ? "one question" : $"{count} questions")} on the tracking page.";
        if (State == OrderState.WaitingForCustomer)
            Enter(OrderState.New, OrderEventKind.Answered, by, at, what);
        else
            Note(OrderEventKind.Answered, by, at, what);
        WakeUp();
        return this;
    }

    private string Words(QuestionEntry entry) => _cams.Count > 1 ? $"Cam {entry.Cam}: {entry.Text.Trim()}" : entry.Text.Trim();

    private static FieldProblem? Problem(QuestionEntry entry) => string.IsNullOrWhiteSpace(entry.Text)
        ? new FieldProblem("question", "A question has no words.")
        : SpecCheck.Text(entry.Text, Question.LongestText, "question", "A question");

    private static FieldProblem? Problem(ReplyEntry entry) =>
        SpecCheck.Text(entry.Value, Orders.Reply.LongestValue, "answer", "An answer") ?? SpecCheck.Text(entry.Words, Orders.Reply.LongestWords, "answer", "An answer");

    private static string? Tidy(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
