namespace CastBook.Workbooks.Settings;

/// <summary>An hour asked for on the command line whose day may be two, such as <c>12/4/26 6 PM</c>: the days of the book settle which.</summary>
/// <param name="Typed">As it was typed.</param>
/// <param name="DayFirst">What it means where the day comes first.</param>
/// <param name="MonthFirst">What it means where the month comes first.</param>
/// <param name="IsPour">Whether the first flask is poured then; else the first powder is weighed.</param>
public sealed record AskedHour(string Typed, DateTime DayFirst, DateTime MonthFirst, bool IsPour);

/// <summary>An hour asked for from which no night can be counted. Nothing was planned or written.</summary>
#pragma warning disable CA1032 // Implement standard exception constructors: it says nothing without its hour.
public sealed class AskedHourException : Exception
#pragma warning restore CA1032
{
    /// <summary>An hour that cannot be used.</summary>
    /// <param name="hour">The hour.</param>
    /// <param name="isSkipped">Whether the clocks skip it that night; else nothing in the book says which day is meant.</param>
    /// <exception cref="ArgumentNullException">The hour is missing.</exception>
    public AskedHourException(AskedHour hour, bool isSkipped)
    {
        Hour = hour ?? throw new ArgumentNullException(nameof(hour));
        IsSkipped = isSkipped;
    }

    /// <summary>The hour.</summary>
    public AskedHour Hour { get; }

    /// <summary>Whether the clocks skip it that night; else nothing in the book says which day is meant.</summary>
    public bool IsSkipped { get; }
}
