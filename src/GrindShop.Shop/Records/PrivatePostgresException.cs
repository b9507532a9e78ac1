namespace GrindShop.Shop.Records;

public enum PostgresFailure
{
    NoBinaries,
    NoAccount,
    NotReachable,
    NotWritable,
    InUse,
    OtherVersion,
    Broken,
}

/// <summary>The private PostgreSQL cannot start; the message is one line that says what to do.</summary>
public sealed class PrivatePostgresException(PostgresFailure reason, string line) : Exception(line)
{
    public PostgresFailure Reason { get; } = reason;
}
