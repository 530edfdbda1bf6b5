namespace CastBook.Cli.Words;

/// <summary>What <c>castbook explain</c> says around an account; how a number came to be is told by <see cref="Workbooks.Explaining.ExplanationText"/>.</summary>
internal static class ExplainWords
{
    // Its help.
    public static string Command => "Tell how a number came to be.\nIts formula, what it was worked out from, and where each of that comes from.\n\nExample: castbook explain harbour-night.xlsx \"Night plan!E5\"";

    public static string Cell => "One cell; left out, every number is told in a line. Without a sheet it is a cell of the list.";

    public static string Start => "Give every step its hour from this one, as with fill.";

    public static string PourAt => "Count every step back from this hour, as with fill.";

    public static string Json => "Print the explanation as JSON.";

    // What it answers.
    public static string IsText(string path, string book) => $"'{path}' is a list as text and has no cells. Fill it, then ask about {book}.";

    public static string NotFilled => "The book is not filled like this: it was changed since, or never filled. These are the numbers that filling it now gives.";

    public static string NoNumbers => "No number is worked out in this book as it stands. Fill it: its sheet Checks then asks for what is missing.";
}
