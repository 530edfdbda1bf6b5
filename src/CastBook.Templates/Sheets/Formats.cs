namespace CastBook.Templates.Sheets;

/// <summary>Number formats: no more digits than a scale, a calliper or a thermometer shows.</summary>
internal static class Formats
{
    public const string AsTyped = "";
    public const string Words = "@";
    public const string Whole = "#,##0";
    public const string Tenths = "#,##0.0";
    public const string Hundredths = "#,##0.00";
    public const string Thousandths = "0.000";
    public const string Day = "d mmm yyyy";
    public const string UsDay = "mmm d, yyyy";

    /// <summary>The number of a format that every office program has; null for one that the book brings along.</summary>
    /// <param name="format">One of the formats above.</param>
    public static int? BuiltIn(string format) => format switch
    {
        AsTyped => 0,
        Whole => 3,
        Hundredths => 4,
        Words => 49,
        _ => null,
    };
}
