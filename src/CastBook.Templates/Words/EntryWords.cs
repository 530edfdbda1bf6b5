namespace CastBook.Templates.Words;

/// <summary>What is said of a wrong entry in a cell.</summary>
internal static class EntryWords
{
    public static string NotInList => "Not in the list";

    public static string ChooseOne => "Choose one of the list.";

    public static string NotNumber => "Not a number";

    public static string TypeDigits => "Type digits only, such as 12.4. The unit stands in the heading.";

    public static string NotDate => "Not a date";

    public static string TypeDate => "Type a date, such as 4 Dec 2026.";

    public static string NoSuchName(string sheet) => $"The {sheet} sheet has no such name. Add it there, or choose one of the list.";
}
