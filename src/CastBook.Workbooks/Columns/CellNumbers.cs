using CastBook.Planning.Shops;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Columns;

/// <summary>Quantities as cells, texts and answers carry them: no more digits than a scale, a jug or a thermometer shows.</summary>
public static class CellNumbers
{
    /// <summary>Grams to a hundredth.</summary>
    /// <param name="mass">The mass.</param>
    public static double? Grams(Mass? mass) => mass is { } some ? Math.Round(some.Grams, 2, MidpointRounding.AwayFromZero) : null;

    /// <summary>Whole millilitres.</summary>
    /// <param name="volume">The volume.</param>
    public static double? Millilitres(Volume? volume) => volume is { } some ? Math.Round(some.Milliliters, MidpointRounding.AwayFromZero) : null;

    /// <summary>Hours to a hundredth.</summary>
    /// <param name="duration">The duration.</param>
    public static double? Hours(Duration? duration) => duration is { } some ? Math.Round(some.Hours, 2, MidpointRounding.AwayFromZero) : null;

    /// <summary>Whole degrees Celsius.</summary>
    /// <param name="temperature">The temperature.</param>
    public static double? Celsius(Temperature? temperature) => temperature is { } some ? Math.Round(some.DegreesCelsius, MidpointRounding.AwayFromZero) : null;

    /// <summary>Whole minutes.</summary>
    /// <param name="duration">The duration.</param>
    public static double? Minutes(Duration? duration) => duration is { } some ? Math.Round(some.Minutes, MidpointRounding.AwayFromZero) : null;

    /// <summary>Minutes to a tenth, for steps that last a few.</summary>
    /// <param name="duration">The duration.</param>
    public static double? TenthsOfMinutes(Duration? duration) => duration is { } some ? Math.Round(some.Minutes, 1, MidpointRounding.AwayFromZero) : null;

    /// <summary>A flask's powder and water for a reader: <c>1,430 g + 543 ml, mix 2</c>.</summary>
    /// <param name="units">The units of the shop.</param>
    /// <param name="powder">The powder.</param>
    /// <param name="water">The water.</param>
    /// <param name="mix">The mix it is filled from; missing where none is planned.</param>
    public static string MixText(ShopUnits units, Mass powder, Volume water, int? mix)
    {
        ArgumentNullException.ThrowIfNull(units);
        return mix is { } number ? ColumnWords.OfMix(units.Say(powder, water), number) : units.Say(powder, water);
    }
}
