using System.Globalization;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A scale that temperatures are written in, to the whole degree.</summary>
/// <param name="Name">As headings and sentences write it.</param>
/// <param name="PerCelsius">How many of its degrees are one of Celsius.</param>
/// <param name="AtFreezing">What it shows where water freezes.</param>
public sealed record WrittenTemperature(string Name, double PerCelsius, double AtFreezing)
{
    /// <summary>Degrees Celsius.</summary>
    public static WrittenTemperature Celsius { get; } = new("°C", 1, 0);

    /// <summary>Degrees Fahrenheit.</summary>
    public static WrittenTemperature Fahrenheit { get; } = new("°F", 1.8, 32);

    /// <summary>What temperatures may be written in.</summary>
    public static IReadOnlyList<WrittenTemperature> All { get; } = [Celsius, Fahrenheit];

    /// <summary>A temperature in whole degrees.</summary>
    /// <param name="temperature">The temperature; nothing gives nothing.</param>
    public double? In(Temperature? temperature) => temperature is { } some ? Math.Round(Exactly(some), MidpointRounding.AwayFromZero) : null;

    /// <summary>A temperature with all its digits.</summary>
    /// <param name="temperature">The temperature.</param>
    public double Exactly(Temperature temperature) => (temperature.DegreesCelsius * PerCelsius) + AtFreezing;

    /// <summary>A temperature for a reader, with the unit.</summary>
    /// <param name="temperature">The temperature.</param>
    public string Say(Temperature temperature) => $"{Exactly(temperature).ToString("#,0", CultureInfo.InvariantCulture)} {Name}";

    /// <summary>A temperature that a sentence names, with the unit.</summary>
    /// <param name="degreesCelsius">In degrees Celsius.</param>
    public string Say(double degreesCelsius) => Say(Temperature.FromDegreesCelsius(degreesCelsius));

    /// <summary>A temperature that a sentence names, the unit left out.</summary>
    /// <param name="degreesCelsius">In degrees Celsius.</param>
    public string Number(double degreesCelsius) => Exactly(Temperature.FromDegreesCelsius(degreesCelsius)).ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>Whole degrees between two temperatures, the unit left out.</summary>
    /// <param name="degreesCelsius">How many of Celsius.</param>
    public string Degrees(double degreesCelsius) => Math.Round(degreesCelsius * PerCelsius).ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>Whole degrees between two temperatures, with the unit.</summary>
    /// <param name="degreesCelsius">How many of Celsius.</param>
    public string SayDegrees(double degreesCelsius) => $"{Degrees(degreesCelsius)} {Name}";
}
