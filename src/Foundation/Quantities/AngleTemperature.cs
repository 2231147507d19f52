namespace Tangwright.Foundation;

/// <summary>An angle; degrees at the edge of the program, radians inside.</summary>
public readonly record struct Angle
{
    private Angle(double radians) => Radians = radians;

    /// <summary>The angle in radians.</summary>
    public double Radians { get; }

    /// <summary>The angle in degrees.</summary>
    public double Degrees => Radians * (180.0 / Math.PI);

    /// <summary>An angle of so many degrees.</summary>
    public static Angle OfDegrees(double degrees) => new(degrees * (Math.PI / 180.0));

    /// <summary>An angle of so many radians.</summary>
    public static Angle OfRadians(double radians) => new(radians);

    /// <summary>Twice the angle: both faces of a bevel together.</summary>
    public Angle Doubled() => new(2 * Radians);

    /// <inheritdoc/>
    public override string ToString() => $"{Degrees} deg";
}

/// <summary>A temperature in °C.</summary>
public readonly record struct Temperature
{
    private Temperature(double celsius) => Celsius = celsius;

    /// <summary>The temperature in °C.</summary>
    public double Celsius { get; }

    /// <summary>The temperature in °F.</summary>
    public double Fahrenheit => (Celsius * 1.8) + 32;

    /// <summary>A temperature of so many °C.</summary>
    public static Temperature OfCelsius(double celsius) => new(celsius);

    /// <summary>A temperature of so many °F.</summary>
    public static Temperature OfFahrenheit(double fahrenheit) => new((fahrenheit - 32) / 1.8);

    /// <inheritdoc/>
    public override string ToString() => $"{Celsius} C";
}

/// <summary>A span of the Rockwell C scale (ISO 6508-1), low to high.</summary>
/// <param name="LowHrc">Lower end, HRC.</param>
/// <param name="HighHrc">Upper end, HRC.</param>
public readonly record struct HardnessBand(double LowHrc, double HighHrc);
