namespace CastBook.Cli.Words;

/// <summary>What <c>castbook share</c> says.</summary>
internal static class ShareWords
{
    // Its help.
    public static string Command => "Make a template for others of a workbook.\nIts headings, formats, lists and settings stay; rows, customers, prices, stock,\nnotes, names, macros and all else go. It says what it kept and what it left out.\n\nExample: castbook share harbour-night.xlsx --out our-template.xlsx";

    public static string Out => "Write the template here; no file may stand there yet.";

    public static string Keep => "Keep this sheet too, with all in it; may be given again.";

    // What is wrong with what was typed.
    public static string IsText(string path) => $"'{path}' is a list as text and holds nothing but rows. Fill it, then share the workbook it becomes.";

    public static string NoMacros(string extension) => $"a template has no macros: type a name that ends in {extension} after --out.";

    // What was done.
    public static string Made(string template, string book) => $"{template}: a template made of {book}, which is as it was";

    public static string Kept(string what) => $"kept  {what}";

    public static string LeftOut(string what) => $"left out  {what}";

    public static string LeftOutSheet(string sheet) => $"left out sheet  {sheet}";

    public static string HowToKeep => "a sheet of which all may be passed on is kept whole with --keep and its name, such as --keep \"Sheet name\"";

    public static string LeftOutWords(string settings) => $"left out  your own words for headings; whoever uses it needs them in a castbook.json beside it: {settings}";

    public static string ReadHeadings(IEnumerable<string> headings) => $"read these headings through, only you know what they mean: {string.Join(", ", headings.Select(h => $"\"{h}\""))}";
}
