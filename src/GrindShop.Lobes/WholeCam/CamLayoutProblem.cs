using System.Globalization;

namespace GrindShop.Lobes;

/// <summary>Why the lobes of a cam cannot be laid out; <see cref="object.ToString"/> says it in words.</summary>
public abstract record CamLayoutProblem
{
    private CamLayoutProblem()
    {
    }

    public sealed record WrongIntervalCount(int Found, int CylinderCount) : CamLayoutProblem
    {
        public override string ToString() => $"{Found} firing intervals were given for {CylinderCount} cylinders.";
    }

    public sealed record IntervalsDoNotClose(double SumCrankDeg) : CamLayoutProblem
    {
        public override string ToString() =>
            string.Create(CultureInfo.InvariantCulture, $"The firing intervals add up to {SumCrankDeg:0.###} crank degrees, not 720.");
    }

    public sealed record UnknownCylinder(int Cylinder) : CamLayoutProblem
    {
        public override string ToString() => $"Cylinder {Cylinder} is not in the firing order.";
    }

    public sealed record NotInOneBank(int Cylinder, int Banks) : CamLayoutProblem
    {
        public override string ToString() => $"Cylinder {Cylinder} must stand in one bank; it stands in {Banks}.";
    }

    public sealed record UnknownBank(string Name) : CamLayoutProblem
    {
        public override string ToString() => $"The engine has no bank \"{Name}\".";
    }

    public sealed record LobeOfOtherBank(LobePlace Lobe, string Bank) : CamLayoutProblem
    {
        public override string ToString() => $"Cylinder {Lobe.Cylinder} is not in bank \"{Bank}\", which this cam serves.";
    }

    /// <summary>A cylinder has more or fewer lobes of one kind than another has.</summary>
    public sealed record UnevenLobes(LobePlace Lobe, int Found, int Expected) : CamLayoutProblem
    {
        public override string ToString() =>
            $"Cylinder {Lobe.Cylinder} has {Found} {Lobe.Valve.ToString().ToLowerInvariant()} lobes on this cam "
            + $"where {Expected} are expected.";
    }

    public sealed record NoLobes : CamLayoutProblem
    {
        public override string ToString() => "No lobe is listed for this cam.";
    }
}
