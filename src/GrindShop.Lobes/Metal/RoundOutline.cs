namespace GrindShop.Lobes;

internal sealed class RoundOutline(double diameterIn) : BlankOutline(() => PolarBody.Circle(diameterIn / 2))
{
    public double RadiusIn => diameterIn / 2;
}
