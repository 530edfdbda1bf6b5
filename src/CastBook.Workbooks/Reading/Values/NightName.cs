using System.Globalization;

namespace CastBook.Workbooks.Reading.Values;

/// <summary>The name of a night as it compares: a day in one form, however it was written.</summary>
internal static class NightName
{
    /// <summary>The name of a day.</summary>
    public static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The name of a night that stands alone: a day where the text can mean only one, else the text.</summary>
    public static string Of(string text) => DayText.Read(text, DayOrders.None).Day is { } day ? Of(day) : text.Trim();
}
