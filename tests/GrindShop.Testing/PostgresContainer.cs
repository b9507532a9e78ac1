using DotNet.Testcontainers.Builders;
using Testcontainers.PostgreSql;

namespace GrindShop.Testing;

/// <summary>PostgreSQL in a container, for whoever asks for it and has a Docker engine.</summary>
internal static class PostgresContainer
{
    private const string Asked = "GRINDSHOP_TEST_CONTAINERS";
    private const string Image = "postgres:17";

    public static async Task<string?> TryStartAsync()
    {
        if (Environment.GetEnvironmentVariable(Asked) != "1") return null;
        try
        {
            var container = new PostgreSqlBuilder(Image).WithUsername("grindshop").Build();
            await container.StartAsync();
            return container.GetConnectionString();
        }
        catch (DockerUnavailableException)
        {
            return null;
        }
    }
}
