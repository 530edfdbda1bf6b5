using System.Globalization;

namespace CastBook.Workbooks.Words;

/// <summary>What findings call the cells of a row, and the rows and units of a list.</summary>
internal static class CellNameWords
{
    public static string Name => "name";

    public static string Quantity => "quantity";

    public static string Weight => "weight";

    public static string Volume => "volume";

    public static string Material => "material";

    public static string Alloy => "alloy";

    public static string Shape => "shape";

    public static string Size => "size";

    public static string Length => "length";

    public static string Width => "width";

    public static string Thickness => "thickness";

    public static string FinestSection => "finest section";

    public static string HeaviestSection => "heaviest section";

    public static string Gates => "number of gates";

    public static string GateDiameter => "gate diameter";

    public static string GateLength => "gate length";

    public static string PerTree => "number per tree";

    public static string KeepInFlask => "flask to keep it in";

    public static string Night => "night";

    public static string PrintedAt => "print temperature";

    public static string Washed => "wash time";

    public static string Cured => "cure time";

    // What is counted.
    public static string UnitOfPieces => "pieces";

    public static string UnitOfGates => "gates";

    // Rows.
    public static string RowOfSheet(int row, string sheet) => string.Create(CultureInfo.InvariantCulture, $"row {row} of sheet {sheet}");

    public static string Rows(int count) => string.Create(CultureInfo.InvariantCulture, $"{count:#,0} {(count == 1 ? "row" : "rows")}");

    public static string TheseRows(int count, string rows) => $"{(count == 1 ? "row" : "rows")} {rows}";

    public static string RowHeld(int row, string held) => string.Create(CultureInfo.InvariantCulture, $"row {row} \"{held}\"");

    public static string DayInRows(string day, int count, string rows) => $"{day} in {TheseRows(count, rows)}";

    public static string QuotedInRows(string text, int count, string rows) => DayInRows(Quoted(text), count, rows);

    public static string Quoted(string text) => text.Length == 0 ? "nothing" : $"\"{text}\"";

    public static string AndMoreDays(int days) => string.Create(CultureInfo.InvariantCulture, $"; and {days} more days");

    // Units.
    public static string Grams => "grams";

    public static string Millimetres => "millimetres";

    public static string Millilitres => "millilitres";

    public static string DegreesCelsius => "degrees Celsius";

    public static string Minutes => "minutes";
}
