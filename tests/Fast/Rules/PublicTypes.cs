using System.Reflection;
using System.Runtime.CompilerServices;

namespace Tangwright.Tests.Rules;

/// <summary>What is passed between rooms cannot be changed by a room, and says its unit.</summary>
public class PublicTypes
{
    private static readonly Assembly[] Pure =
    [
        typeof(Foundation.Point).Assembly,
        typeof(Core.Plan).Assembly,
        typeof(Inputs.PlanReader).Assembly,
        typeof(Documents.SheetKind).Assembly,
    ];

    // endings that name a unit, or say that there is none
    private static readonly string[] Units =
    [
        "Mm", "Mm2", "Mm3", "Mm4", "Mm5", "Inches", "Grams", "Ounces", "GramsPerCm3", "Degrees", "Radians", "Celsius", "Fahrenheit", "Percent", "Rpm",
        "W", "C", "Hb", "Hrc", "Hv", "Hours", "WPerMK", "WPerM2K", "CPerSecond", "JPerKgK", "KgPerM3", "PerInch", "KgM2", "Litres", "Factor", "Share", "Ratio", "Tangent",
        "Newtons", "Pounds", "NewtonMetres", "InchPounds", "Watts", "Horsepower", "MetresPerMin", "FeetPerMin", "TurnsPerMin", "MmPerMin", "MmPerTurn", "Seconds", "Minutes", "GramsPerMinute", "GramsPerBelt", "Cm2PerMin", "PerInch", "Grit", "Belts", "Um", "Micron", "GPa", "MPa", "PerK", "GramsPerMetre", "Turns",
    ];

    // plane geometry states "mm" once for the whole type
    private static readonly HashSet<string> SaysMmOnce = new(StringComparer.Ordinal)
    {
        "Point", "Box", "Transform", "Segment", "Line", "Arc", "Bezier", "Path", "PathSpot", "Region", "Gauss", "RayHit", "RayHits", "RollingBall", "Nearest", "Midline", "MeshPoint", "SpacePoint",

        // factors without unit; a number as it stands in a path's text, in the text's own unit
        "PrintScale", "PathNumber",

        // its key ends with the unit
        "FigureDifference",

        // a figure of whatever was logged; a number of a series of grits
        "LoggedRange", "Grit",

        // mm, or g where IsWeight says so
        "BalanceLever", "LeverAnswer",
    };

    [Fact]
    public void Are_immutable()
    {
        var changeable = from a in Pure
                         from t in a.GetExportedTypes()
                         from m in t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
                         where m is FieldInfo { IsInitOnly: false, IsLiteral: false } f && !t.IsEnum || m is PropertyInfo p && SetsAfterwards(p)
                         select $"{t.Name}.{m.Name}";
        Assert.Empty(changeable);
    }

    [Fact]
    public void Name_the_unit_of_a_bare_number()
    {
        var bare = from a in Pure
                   from t in a.GetExportedTypes()
                   where !SaysMmOnce.Contains(t.Name)
                   from p in t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
                   where (Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType) == typeof(double)
                   where !Array.Exists(Units, u => p.Name.EndsWith(u, StringComparison.Ordinal))
                   select $"{t.Name}.{p.Name}";
        Assert.True(!bare.Any(), string.Join(", ", bare));
    }

    private static bool SetsAfterwards(PropertyInfo p)
        => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));
}
