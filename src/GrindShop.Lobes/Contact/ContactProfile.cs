namespace GrindShop.Lobes;

/// <summary>A place on the lobe as the caller's lift law and contour give it.</summary>
/// <param name="CamDeg">Cam angle from the nose.</param>
/// <param name="LiftIn">Lifter lift.</param>
/// <param name="AccelerationInPerCamRad2">Second derivative of lift by the cam angle in radians.</param>
/// <param name="PressureAngleDeg">0 under a flat follower.</param>
/// <param name="RadiusIn">
/// Radius of curvature of the contour; null where straight, negative where concave. Beyond 100000 in either way it counts as straight.
/// </param>
public sealed record LobeStation(
    double CamDeg, double LiftIn, double AccelerationInPerCamRad2, double PressureAngleDeg, double? RadiusIn);

/// <summary>The follower's face and the materials that meet.</summary>
/// <param name="WidthIn">Length of the line of contact along the shaft.</param>
/// <param name="RadiusIn">Roller radius; null for a flat.</param>
/// <param name="Follower">Elastic constants of the follower.</param>
/// <param name="Lobe">Elastic constants of the lobe.</param>
public sealed record FollowerFace(double WidthIn, double? RadiusIn, ElasticConstants Follower, ElasticConstants Lobe);

/// <summary>Force and contact at one station; a negative force means that the follower has left the lobe.</summary>
public sealed record ContactRow(double CamDeg, double ForceLbf, Outcome<LineContact, ContactProblem> Contact);

/// <summary>Contact all round a lobe at one engine speed.</summary>
public sealed record ContactProfile(IReadOnlyList<ContactRow> Rows)
{
    /// <summary>The most heavily pressed station; null when no station has a contact.</summary>
    public ContactRow? Peak => Rows.Where(row => row.Contact.Succeeded).MaxBy(row => row.Contact.Value!.PeakPressurePsi);

    /// <summary>Stations without a contact, each with its reason.</summary>
    public IEnumerable<ContactRow> Troubled => Rows.Where(row => !row.Contact.Succeeded);

    /// <exception cref="ArgumentOutOfRangeException">
    /// As <see cref="ValveTrain.NormalForceLbf"/> and <see cref="LineContact.Of"/>.
    /// </exception>
    public static ContactProfile Of(IReadOnlyList<LobeStation> stations, ValveTrain train, FollowerFace face, double engineRpm) =>
        new([.. stations.Select(station => Row(station, train, face, engineRpm))]);

    private static ContactRow Row(LobeStation station, ValveTrain train, FollowerFace face, double engineRpm)
    {
        var force = train.NormalForceLbf(
            station.LiftIn, station.AccelerationInPerCamRad2, station.PressureAngleDeg, engineRpm);
        return new(station.CamDeg, force, force < 0 ? new ContactProblem.ContactLost(-force) : Contact(force, station, face));
    }

    private static Outcome<LineContact, ContactProblem> Contact(double force, LobeStation station, FollowerFace face) => LineContact.Of(
        force,
        face.WidthIn,
        face.RadiusIn,
        Math.Abs(station.RadiusIn ?? 0) > LineContact.MostRadiusIn ? null : station.RadiusIn,
        face.Follower.ModulusPsi,
        face.Lobe.ModulusPsi,
        face.Follower.Poisson,
        face.Lobe.Poisson);
}
