using System.Net.Sockets;
using GrindShop.Shop.Demo;
using GrindShop.Shop.Mail;
using GrindShop.Shop.Records;
using Microsoft.AspNetCore.Connections;
using Npgsql;

namespace GrindShop.Web.Shell;

/// <summary>The failures of a start that a person can mend, each as one line; anything else is a bug and keeps its trace.</summary>
internal static class StartFailure
{
    public static string? Explain(Exception error) => error switch
    {
        PrivatePostgresException postgres => postgres.Message,
        ScenarioException scenario => scenario.Message,
        MailSettingsException mail => $"{mail.Message}.",
        IOException { InnerException: AddressInUseException } busy => $"{busy.Message.TrimEnd('.')}. Stop the other program or set ASPNETCORE_URLS, for example http://127.0.0.1:5081.",
        SocketException { SocketErrorCode: SocketError.AddressNotAvailable or SocketError.AccessDenied } socket => $"the address in ASPNETCORE_URLS cannot be used: {socket.Message}.",
        PostgresException refused => $"the database refused: {refused.MessageText}.",
        NpgsqlException unreachable => $"the database of ConnectionStrings__Shop does not answer: {unreachable.Message}.",
        _ => null,
    };
}
