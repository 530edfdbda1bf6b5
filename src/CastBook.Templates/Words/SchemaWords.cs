namespace CastBook.Templates.Words;

/// <summary>What the schema of castbook.json says to editors.</summary>
internal static class SchemaWords
{
    public static string Schema => "This schema, for editors. CastBook does not look at it.";

    public static string File => "Settings for the workbooks of a folder. What a workbook says on its own sheets wins over them.";

    public static string AlloyMeant => "Which alloy is meant by a name in the list.";

    public static string Columns => "More words for the headings of the list, by column.";

    public static string Shop => "The shop file: a workbook whose sheets stand in for those that a book lacks. Its path, from this file.";

    public static string Sheet => "The sheet with the list, or several, or all.";

    public static string Limits => "How much a workbook may ask of the machine.";

    public static string Headings => "Headings, besides those that CastBook knows.";

    public static string InUnit(string whatFor, string unit) => $"{whatFor} In {unit}.";
}
