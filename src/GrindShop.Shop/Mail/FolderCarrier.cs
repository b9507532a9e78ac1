using MimeKit;

namespace GrindShop.Shop.Mail;

/// <summary>Writes messages as .eml files into a folder, where no mail server is set up.</summary>
public sealed class FolderCarrier(string folder) : IMailCarrier
{
    private readonly string _folder = Path.GetFullPath(folder);

    public MailState WhenDone => MailState.Filed;

    public string Via => _folder;

    public static string FileName(string messageId) => string.Concat(messageId.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '.' or '-' ? letter : '_')) + ".eml";

    public async Task<CarryResult> CarryAsync(MimeMessage message, CancellationToken cancel)
    {
        try
        {
            Directory.CreateDirectory(_folder);
            var (file, draft) = (Path.Combine(_folder, FileName(message.MessageId ?? "")), Path.GetTempFileName());
            await message.WriteToAsync(draft, cancel);
            File.Move(draft, file, overwrite: true);
            return new CarryResult(Carried.Done);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return new CarryResult(Carried.NotNow, error.Message);
        }
    }
}
