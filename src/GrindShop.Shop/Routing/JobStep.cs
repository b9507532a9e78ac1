using GrindShop.Shop.Blanks;

namespace GrindShop.Shop.Routing;

/// <summary>One step of a job's route.</summary>
public sealed class JobStep
{
    private JobStep()
    {
    }

    internal JobStep(int ordinal, RouteStage stage) => (Ordinal, Stage, VendorId) = (ordinal, stage.Stage, stage.Vendor?.Id);

    public int Id { get; private set; }

    public int JobId { get; private set; }

    public int Ordinal { get; private set; }

    public Stage Stage { get; private set; }

    public int? VendorId { get; private set; }

    public Vendor? Vendor { get; private set; }

    public DateTimeOffset? DoneAt { get; private set; }

    public string? DoneBy { get; private set; }

    public bool IsDone => DoneAt is not null;

    internal void Done(string by, DateTimeOffset at) => (DoneBy, DoneAt) = (by, at);
}
