namespace GrindShop.Lobes;

/// <summary>
/// A point of a contour. Frame fixed in the lobe: x through the nose, y on the closing side, origin on the shaft axis.
/// </summary>
/// <param name="CamRad">Cam angle at which the follower touches here, rad.</param>
/// <param name="XIn">Towards the nose, in.</param>
/// <param name="YIn">Towards the closing side, in.</param>
/// <param name="NormalRad">Direction of the outward normal, rad.</param>
/// <param name="IsConcave">The flank is hollow here.</param>
/// <param name="RadiusIn">Radius of curvature, in: convex, zero or less where undercut; or that of the hollow.</param>
public readonly record struct ContourPoint(double CamRad, double XIn, double YIn, double NormalRad, bool IsConcave, double RadiusIn)
{
    public double PolarAngleRad => Math.Atan2(YIn, XIn);

    public double PolarRadiusIn => Math.Sqrt(XIn * XIn + YIn * YIn);
}
