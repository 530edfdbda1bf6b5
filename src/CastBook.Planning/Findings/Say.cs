using System.Globalization;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Findings;

/// <summary>Writes values for a reader, with no more digits than a scale or a thermometer shows.</summary>
public static class Say
{
    /// <summary>A volume in millilitres: to 0.1 ml under 100 ml, else to 1 ml.</summary>
    /// <param name="volume">Any volume.</param>
    public static string Millilitres(Volume volume) => Number(volume.Milliliters) + " ml";

    /// <summary>A temperature in whole degrees Celsius.</summary>
    /// <param name="temperature">Any temperature.</param>
    public static string Celsius(Temperature temperature) =>
        temperature.DegreesCelsius.ToString("#,0", CultureInfo.InvariantCulture) + " °C";

    /// <summary>A density in g/cm³, two decimals.</summary>
    /// <param name="density">Any density.</param>
    public static string Dense(Density density) =>
        density.GramsPerCubicCentimeter.ToString("0.00", CultureInfo.InvariantCulture) + " g/cm³";

    /// <summary>A ratio as a percentage, one decimal at most.</summary>
    /// <param name="ratio">Any ratio.</param>
    public static string Percent(Ratio ratio) => Plain(Math.Round(ratio.Percent, 1)) + " %";

    /// <summary>A duration in minutes, one decimal at most.</summary>
    /// <param name="duration">Any duration.</param>
    public static string Minutes(Duration duration) => Plain(Math.Round(duration.Minutes, 1)) + " min";

    /// <summary>A duration in hours and minutes: <c>1 h</c>, <c>1 h 20</c>.</summary>
    /// <param name="duration">Any duration.</param>
    public static string Hours(Duration duration)
    {
        var minutes = (long)Math.Round(duration.Minutes, MidpointRounding.AwayFromZero);
        return minutes % 60 == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h")
            : string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h {minutes % 60:00}");
    }

    /// <summary>A number of things: <c>1 piece</c>, <c>1,200 pieces</c>.</summary>
    /// <param name="count">How many.</param>
    /// <param name="one">The word for one.</param>
    /// <param name="many">The word for several.</param>
    public static string Count(long count, string one, string many) =>
        count.ToString("#,0", CultureInfo.InvariantCulture) + " " + (count == 1 ? one : many);

    /// <summary>A whole number with its thousands separated.</summary>
    /// <param name="count">Any number.</param>
    public static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>A number with as many decimals as it has, two at most.</summary>
    /// <param name="value">Any number.</param>
    public static string Plain(double value) => value.ToString("#,0.##", CultureInfo.InvariantCulture);

    /// <summary>A list as people say it: <c>a, b or c</c>.</summary>
    /// <param name="words">The words.</param>
    internal static string Choice(IReadOnlyList<string> words) => Joined(words, SentenceWords.Or);

    /// <summary>A list as people say it: <c>a, b and c</c>.</summary>
    /// <param name="words">The words.</param>
    internal static string Together(IReadOnlyList<string> words) => Joined(words, SentenceWords.And);

    /// <summary>The names that are like an unknown one, behind the words that ask for it: <c> (the nearest are "a" and "b")</c>; nothing where there are none.</summary>
    /// <param name="names">The names.</param>
    internal static string Nearest(IReadOnlyList<string> names) =>
        names.Count == 0 ? "" : SentenceWords.Nearest(names.Count == 1, Together([.. names.Select(n => $"\"{n}\"")]));

    /// <summary>A piece's name in quotes, or <c>this piece</c> where it has none.</summary>
    /// <param name="piece">The piece.</param>
    internal static string Name(Piece piece) => piece.Name.Length == 0 ? SentenceWords.ThisPiece : $"\"{piece.Name}\"";

    private static string Number(double value)
    {
        // 99.96 is shown as 100, not as 100.0: the switch looks at what is shown.
        var tenth = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return tenth.ToString(Math.Abs(tenth) < 100 ? "0.0" : "#,0", CultureInfo.InvariantCulture);
    }

    private static string Joined(IReadOnlyList<string> words, string last) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => string.Join(", ", words.Take(words.Count - 1)) + last + words[^1],
    };
}
