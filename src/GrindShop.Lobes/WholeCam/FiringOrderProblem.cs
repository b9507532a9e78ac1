namespace GrindShop.Lobes;

/// <summary>Why a firing order cannot be used; <see cref="object.ToString"/> says it in words.</summary>
public abstract record FiringOrderProblem
{
    private FiringOrderProblem()
    {
    }

    /// <summary>No cylinder was given.</summary>
    public sealed record Nothing : FiringOrderProblem
    {
        public override string ToString() => "The firing order is empty.";
    }

    /// <summary>A word that is not the number of one of the engine's cylinders.</summary>
    public sealed record NotACylinder(string Word, int CylinderCount) : FiringOrderProblem
    {
        public override string ToString() => $"\"{Word}\" is not a cylinder from 1 to {CylinderCount}.";
    }

    /// <summary>A cylinder that fires twice.</summary>
    public sealed record Repeated(int Cylinder) : FiringOrderProblem
    {
        public override string ToString() => $"Cylinder {Cylinder} appears more than once.";
    }

    /// <summary>
    /// Cylinders that never fire. An order of the wrong length is always this (too short) or <see cref="Repeated"/> (too long).
    /// </summary>
    public sealed record Missing(IReadOnlyList<int> Cylinders, int CylinderCount) : FiringOrderProblem
    {
        public override string ToString() =>
            $"The firing order has {CylinderCount - Cylinders.Count} of {CylinderCount} cylinders; "
            + $"missing: {string.Join(", ", Cylinders)}.";
    }
}
