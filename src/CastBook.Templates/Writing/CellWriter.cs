using ClosedXML.Excel;

namespace CastBook.Templates.Writing;

/// <summary>Writes values into cells; nothing else in the project does.</summary>
internal static class CellWriter
{
    /// <summary>Writes a word as a word, a number as a number, a day as a day.</summary>
    /// <param name="cell">Where.</param>
    /// <param name="value">What: a string, an int, a double, a <see cref="DateOnly"/> or null for nothing.</param>
    /// <exception cref="ArgumentException"><paramref name="value"/> is of another type.</exception>
    /// <remarks>ClosedXML 0.95.4 guesses the type of a string given to Value, by the machine's culture: 1-2 becomes a day. SetValue keeps it.</remarks>
    public static void Write(IXLCell cell, object? value)
    {
        switch (value)
        {
            case null:
                break;
            case string words:
                cell.SetValue(words);
                break;
            case int whole:
                cell.SetValue((double)whole);
                break;
            case double number:
                cell.SetValue(number);
                break;
            case DateOnly day:
                cell.SetValue(day.ToDateTime(TimeOnly.MinValue));
                break;
            default:
                throw new ArgumentException($"A cell cannot hold a {value.GetType().Name}.", nameof(value));
        }
    }
}
