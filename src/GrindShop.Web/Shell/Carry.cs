namespace GrindShop.Web.Shell;

/// <summary>One field that two people may change at once: untouched here it takes the newer value, else what was typed stays.</summary>
public static class Carry
{
    public static T Of<T>(T was, T typed, T newer) => EqualityComparer<T>.Default.Equals(typed, was) ? newer : typed;
}
