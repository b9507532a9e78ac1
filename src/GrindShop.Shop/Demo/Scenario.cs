using GrindShop.Shop.Blanks;
using GrindShop.Shop.Engines;
using GrindShop.Shop.Orders;
using GrindShop.Shop.Records;
using GrindShop.Shop.Routing;
using Microsoft.EntityFrameworkCore;

using Answers = System.Collections.Generic.IReadOnlyDictionary<GrindShop.Shop.Demo.ScenarioCam, GrindShop.Shop.Feasibility.FeasibilityAnswer?>;

namespace GrindShop.Shop.Demo;

/// <summary>What became of a load: done, or left alone (the shop has engine families already), or stopped by problems in the files.</summary>
public sealed record ScenarioLoad(bool Loaded, IReadOnlyList<RowProblem> Problems);

/// <summary>
/// Fills an empty shop with the scenario of a folder, all in one transaction. Orders and jobs live through their own methods at their own dates, so
/// that histories and stock movements are those of a shop that has worked for months.
/// </summary>
public static class Scenario
{
    /// <inheritdoc cref="Scenario"/>
    /// <exception cref="ScenarioException">The files have problems; nothing was loaded.</exception>
    public static async Task LoadAsync(ShopDb db, string folder, CancellationToken cancel = default)
    {
        var load = await TryLoadAsync(db, folder, DateTimeOffset.UtcNow, cancel);
        if (load.Problems.Count > 0)
            throw new ScenarioException($"the scenario in {folder} cannot be loaded:{string.Concat(load.Problems.Select(problem => $"\n  {problem}"))}");
    }

    /// <summary>The same with the day it is loaded on, and problems as a result.</summary>
    public static async Task<ScenarioLoad> TryLoadAsync(ShopDb db, string folder, DateTimeOffset now, CancellationToken cancel = default)
    {
        if (await db.EngineFamilies.AnyAsync(cancel))
            return new ScenarioLoad(false, []);
        var reading = ScenarioReader.Read(folder);
        if (reading.Scenario is not { } scenario)
            return new ScenarioLoad(false, reading.Problems);
        var calendar = new ScenarioCalendar(scenario.Settings, now);
        var answers = new ScenarioAnswers(scenario, calendar).All(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var problems = await FillAsync(db, scenario, answers, calendar, cancel);
        if (problems.Count > 0)
        {
            db.ChangeTracker.Clear();
            return new ScenarioLoad(false, problems);
        }
        await transaction.CommitAsync(cancel);
        return new ScenarioLoad(true, []);
    }

    private static async Task<IReadOnlyList<RowProblem>> FillAsync(
        ShopDb db, ShopScenario scenario, Answers answers, ScenarioCalendar calendar, CancellationToken cancel)
    {
        var shop = await ScenarioCatalog.AddAsync(db, scenario, calendar, cancel);
        var stories = await StoriesAsync(db, scenario, answers, shop, calendar, cancel);
        IReadOnlyList<RowProblem> problems = [.. Play(stories), .. await ScenarioBuying.AddAsync(db, scenario, shop, calendar, cancel)];
        if (problems.Count > 0)
            return problems;
        db.AddRange(stories.Select(story => story.Order));
        db.AddRange(stories.Select(story => story.Job).OfType<Job>());
        await db.SaveChangesAsync(cancel);
        return [];
    }

    private static async Task<List<OrderStory>> StoriesAsync(
        ShopDb db, ShopScenario scenario, Answers answers, ScenarioShop shop, ScenarioCalendar calendar, CancellationToken cancel)
    {
        var customers = scenario.Customers.ToDictionary(contact => contact, contact => Customer(contact, scenario.Orders, calendar));
        db.AddRange(customers.Values);
        var stories = new List<OrderStory>();
        foreach (var order in scenario.Orders.OrderByDescending(order => order.ReceivedDaysAgo).ThenBy(order => order.Order))
            stories.Add(new OrderStory(order, answers, await db.NextOrderNumbersAsync(cancel), customers[order.Customer], shop, calendar));
        return stories;
    }

    /// <summary>Everything in the order of time, so that each order meets the stock of its day. A story that is refused ends there.</summary>
    private static IReadOnlyList<RowProblem> Play(IReadOnlyList<OrderStory> stories)
    {
        var refused = new Dictionary<OrderStory, RowProblem>();
        foreach (var (at, story, play) in stories.SelectMany(story => story.Happenings()).OrderBy(happening => happening.At).ToList())
            if (!refused.ContainsKey(story) && play(at) is { } problem)
                refused.Add(story, problem);
        return [.. refused.Values];
    }

    private static Customer Customer(Contact contact, IReadOnlyList<ScenarioOrder> orders, ScenarioCalendar calendar) => new()
    {
        Name = contact.Name!,
        Email = EnquiryCheck.Email(contact),
        Phone = EnquiryCheck.Phone(contact),
        Since = calendar.At(orders.Where(order => order.Customer == contact).Select(order => order.ReceivedDaysAgo).DefaultIfEmpty(0).Max(), ScenarioCalendar.StockComes),
    };
}
