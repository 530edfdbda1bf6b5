using System.Globalization;

namespace CastBook.Cli.Words;

/// <summary>What <c>castbook kiln-log</c> says around the comparison, which is told by <see cref="Workbooks.Reports.KilnLogText"/>.</summary>
internal static class KilnLogWords
{
    // Its help.
    public static string Command => "Lay a kiln's temperature log over the plan.\nWhich hold was not reached, by how much, and what the core of the moulds saw.\n\nExample: castbook kiln-log harbour-night.xlsx front-kiln.csv";

    public static string Book => "The workbook of the night (.xlsx or .xlsm). It is only read.";

    public static string Log => "The kiln's log: a time and a temperature a row (.csv, .tsv or .txt). It is only read.";

    public static string Load => "The kiln load it is of, by its number on the Kiln sheet.";

    public static string Column => "The heading of the column with the kiln's temperature, where it is not found by itself.";

    // Which load is meant.
    public static string NoLoads => "this night has no kiln load to compare with: see the Checks sheet of the filled book.";

    public static string NoSuchLoad(int asked, int loads) => loads == 1
        ? string.Create(CultureInfo.InvariantCulture, $"there is no load {asked}; this night has only load 1. Type --load 1, or leave --load out.")
        : string.Create(CultureInfo.InvariantCulture, $"there is no load {asked}; this night has {loads}. Type a number from 1 to {loads} after --load.");

    public static string WhichLoad(int loads) => string.Create(CultureInfo.InvariantCulture, $"this night has {loads} kiln loads; say which one the log is of, such as --load 1.");

    // What was read, in one line.
    public static string Read(string log, int readings, string heading, int leftOut, string when) => $"{log}: {Readings(readings)}{Under(heading)}{LeftOut(leftOut)}, {when}";

    public static string FromTo(string begins, string ends, string takes) => $"{begins} to {ends} ({takes})";

    public static string Takes(double hours, int minutes) => string.Create(CultureInfo.InvariantCulture, $"{hours:0} h {minutes:00}");

    private static string Readings(int count) => count == 1 ? "1 reading" : string.Create(CultureInfo.InvariantCulture, $"{count:#,0} readings");

    private static string Under(string heading) => heading.Length == 0 ? "" : $" under \"{heading}\"";

    private static string LeftOut(int rows) => rows switch
    {
        0 => "",
        1 => ", 1 row left out",
        _ => string.Create(CultureInfo.InvariantCulture, $", {rows:#,0} rows left out"),
    };
}
