using GrindShop.Shop.Orders;
using GrindShop.Shop.Specs;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using MimeKit;
using static Microsoft.Playwright.Assertions;

namespace GrindShop.Browser.Tests;

/// <summary>The desk asks, the customer answers on the tracking page, the desk takes the answer over.</summary>
public sealed class QuestionTests(Browser browser) : IClassFixture<Browser>
{
    [Fact]
    public async Task A_question_goes_out_is_answered_and_its_answer_taken_over()
    {
        var order = await SubmitAsync();
        var desk = await browser.VisitAsync(Person.Desk);
        await desk.OpenAsync($"/desk/orders/{order.Number}");
        await desk.CheckAsync("#ask-1-lobeSeparationCamDeg-WouldHelp");
        await desk.FillAsync("#ask-own", "Will it see more than 7000 rpm?");
        await desk.ClickAsync("#preview");
        await Expect(desk.Locator("#preview-text")).ToContainTextAsync("Will it see more than 7000 rpm?");
        await desk.LookAsync("questions-desk");
        await desk.ClickAsync("#ask");
        await Expect(desk.Locator("#state")).ToContainTextAsync("waiting");

        await Expect(desk.Locator("#mails li").Nth(1)).ToContainTextAsync("in the folder");
        var letter = Assert.Single(Letters($"Order {order.Number}: "), text => text.Contains("7000 rpm", StringComparison.Ordinal));
        var address = letter.Split('\n').First(line => line.Contains("/track/", StringComparison.Ordinal)).Trim();

        var customer = await browser.VisitAsync();
        await customer.OpenAsync(new Uri(address).AbsolutePath);
        var number = customer.Locator("input[id^=reply-]").First;
        await number.FillAsync("11 2");
        await customer.ClickAsync("#send-answers");
        await Expect(customer.Locator("#questions-problem")).ToBeVisibleAsync();
        await customer.LookAsync("questions-customer");
        await number.FillAsync("110");
        await customer.ClickAsync("#send-answers");
        await Expect(customer.Locator("#answered")).ToBeVisibleAsync();
        await customer.LookAsync("questions-answered");

        await Expect(desk.Locator("#asked")).ToContainTextAsync("110 cam degrees");
        await desk.LookAsync("questions-take");
        await desk.ClickAsync("#take-answers-1");
        await Expect(desk.Locator("#spec")).ToContainTextAsync("110 cam deg");
        await Expect(desk.Locator("#take-1")).ToHaveCountAsync(0);
        await desk.OpenAsync("/desk/mail");
        await Expect(desk.Locator("#outgoing")).ToContainTextAsync($"Order {order.Number}");
        await desk.LookAsync("mail-desk");
    }

    private async Task<Order> SubmitAsync() => (await browser.App.Services.GetRequiredService<SpecIntake>().SubmitAsync(new Enquiry
    {
        SubmitKey = Guid.NewGuid().ToString(),
        Channel = OrderChannel.Web,
        Contact = new Contact { Name = "Wanda Ferris", Email = "wanda.ferris@example.org" },
        Spec = new CamSpec { EngineFamily = "RV8-R", Lifter = LifterType.HydraulicRoller, Intake = new LobeWish { LobeLiftIn = .335, DurationAt050CrankDeg = 222 } },
    }, "customer")).Order!;

    private List<string> Letters(string subject) =>
    [
        .. from file in Directory.GetFiles(browser.App.MailFolder, "*.eml")
           let message = MimeMessage.Load(file)
           where message.Subject?.StartsWith(subject, StringComparison.Ordinal) == true
           select message.TextBody ?? "",
    ];
}
