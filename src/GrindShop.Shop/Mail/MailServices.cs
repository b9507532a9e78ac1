using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace GrindShop.Shop.Mail;

internal static class MailServices
{
    /// <summary>Without settings mails go to the usual folder; without a printer of papers, mails that need one wait.</summary>
    public static void AddMail(this IServiceCollection services)
    {
        services.TryAddSingleton(new MailSettings());
        services.TryAddSingleton<PrintPapers>((_, _, _) => Task.FromResult<IReadOnlyList<PrintedPaper>>([]));
        services.TryAddSingleton(provider => Carrier(provider.GetRequiredService<MailSettings>()));
        services.AddSingleton<MailWriter>();
        services.AddSingleton<Postman>();
        services.AddSingleton<Outbox>();
        services.AddSingleton<Mailbox>();
        services.AddSingleton<MailTray>();
        services.AddHostedService<MailWorker>();
    }

    private static IMailCarrier Carrier(MailSettings settings) => settings.Smtp is { } server ? new SmtpCarrier(server) : new FolderCarrier(settings.Folder);
}
