namespace Tangwright.Foundation;

/// <summary>A force in N.</summary>
public readonly record struct Force
{
    private Force(double newtons) => Newtons = newtons;

    /// <summary>One pound-force in N: 0.45359237 kg times standard gravity 9.80665 m/s², both exact.</summary>
    public const double NewtonsPerPound = 4.4482216152605;

    /// <summary>The force in N.</summary>
    public double Newtons { get; }

    /// <summary>The force in pounds-force.</summary>
    public double Pounds => Newtons / NewtonsPerPound;

    /// <summary>A force of so many N.</summary>
    public static Force OfNewtons(double newtons) => new(newtons);

    /// <summary>A force of so many pounds-force.</summary>
    public static Force OfPounds(double pounds) => new(pounds * NewtonsPerPound);

    /// <inheritdoc/>
    public override string ToString() => $"{Newtons} N";
}

/// <summary>A torque in N·m.</summary>
public readonly record struct Torque
{
    private Torque(double newtonMetres) => NewtonMetres = newtonMetres;

    /// <summary>The torque in N·m.</summary>
    public double NewtonMetres { get; }

    /// <summary>The torque in inch-pounds.</summary>
    public double InchPounds => NewtonMetres * 1000 / (Force.NewtonsPerPound * Length.MmPerInch);

    /// <summary>A torque of so many N·m.</summary>
    public static Torque OfNewtonMetres(double newtonMetres) => new(newtonMetres);

    /// <summary>A torque of so many inch-pounds.</summary>
    public static Torque OfInchPounds(double inchPounds) => new(inchPounds * Force.NewtonsPerPound * Length.MmPerInch / 1000);

    /// <inheritdoc/>
    public override string ToString() => $"{NewtonMetres} N·m";
}

/// <summary>A power in W.</summary>
public readonly record struct Power
{
    private Power(double watts) => Watts = watts;

    /// <summary>One horsepower of 550 ft·lbf/s, W.</summary>
    public const double WattsPerHorsepower = 745.69987158227022;

    /// <summary>The power in W.</summary>
    public double Watts { get; }

    /// <summary>The power in horsepower of 550 ft·lbf/s.</summary>
    public double Horsepower => Watts / WattsPerHorsepower;

    /// <summary>A power of so many W.</summary>
    public static Power OfWatts(double watts) => new(watts);

    /// <summary>The power of a torque at so many turns a minute.</summary>
    public static Power Of(Torque torque, double turnsPerMin) => new(torque.NewtonMetres * turnsPerMin * 2 * Math.PI / 60);

    /// <inheritdoc/>
    public override string ToString() => $"{Watts} W";
}

/// <summary>A cutting speed in m/min.</summary>
public readonly record struct CuttingSpeed
{
    private CuttingSpeed(double metresPerMin) => MetresPerMin = metresPerMin;

    /// <summary>The speed in m/min.</summary>
    public double MetresPerMin { get; }

    /// <summary>The speed in feet a minute.</summary>
    public double FeetPerMin => MetresPerMin / (12 * Length.MmPerInch / 1000);

    /// <summary>A speed of so many m/min.</summary>
    public static CuttingSpeed OfMetresPerMin(double metresPerMin) => new(metresPerMin);

    /// <summary>A speed of so many feet a minute.</summary>
    public static CuttingSpeed OfFeetPerMin(double feetPerMin) => new(feetPerMin * 12 * Length.MmPerInch / 1000);

    /// <summary>Turns a minute that give a diameter this speed at its rim: n = v / (π d).</summary>
    public double TurnsPerMin(Length diameter) => 1000 * MetresPerMin / (Math.PI * diameter.Mm);

    /// <inheritdoc/>
    public override string ToString() => $"{MetresPerMin} m/min";
}
