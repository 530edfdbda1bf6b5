using System.Globalization;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A unit that volumes of water and slurry are written in.</summary>
/// <param name="Name">As headings and sentences write it.</param>
/// <param name="One">One of it.</param>
/// <param name="Decimals">Decimals that are kept.</param>
/// <param name="Format">Number format.</param>
/// <param name="Small">Number format of less than a hundred in a sentence.</param>
public sealed record WrittenVolume(string Name, Volume One, int Decimals, string Format, string Small)
{
    /// <summary>Millilitres.</summary>
    public static WrittenVolume Millilitre { get; } = new("ml", Volume.FromMilliliters(1), 0, "#,##0", "0.0");

    /// <summary>Fluid ounces of the United States: 231 cubic inches to 128 of them, exactly; those of Britain are 4 % smaller.</summary>
    public static WrittenVolume UsFluidOunce { get; } = new("US fl oz", Volume.FromMilliliters(29.5735295625), 2, "#,##0.00", "0.00");

    /// <summary>What water may be written in.</summary>
    public static IReadOnlyList<WrittenVolume> All { get; } = [Millilitre, UsFluidOunce];

    /// <summary>A volume in this unit, to the nearest that is written.</summary>
    /// <param name="volume">The volume; nothing gives nothing.</param>
    public double? In(Volume? volume) => volume is { } some ? Math.Round(some / One, Decimals, MidpointRounding.AwayFromZero) : null;

    /// <summary>A volume for a reader, with the unit.</summary>
    /// <param name="volume">The volume.</param>
    public string Say(Volume volume) => $"{(volume / One).ToString(Format, CultureInfo.InvariantCulture)} {Name}";

    /// <summary>A volume of melt or of a vessel for a reader, with the unit: finer than what is poured into a bowl.</summary>
    /// <param name="volume">The volume.</param>
    public string SayFinely(Volume volume)
    {
        // 99.96 is shown as 100, not as 100.0: the switch looks at what is shown.
        var tenth = Math.Round(volume / One, 1, MidpointRounding.AwayFromZero);
        return $"{(volume / One).ToString(Math.Abs(tenth) < 100 ? Small : Format, CultureInfo.InvariantCulture)} {Name}";
    }
}
