namespace CastBook.Workbooks.Words;

/// <summary>What the sheet Metal says, and what is said of an alloy's metal elsewhere.</summary>
internal static class MetalSheetWords
{
    public static string Sheet => "Metal";

    public static string Title(string book) => $"Metal: {book}";

    public static string Under => "Re-melt is used up first, as far as the least share of fresh metal allows. Trees that are under way get metal first, then pieces that are due.";

    public static string[] AlloyHeadings(string unit, string buying) =>
    [
        "Alloy", "For", $"Needed ({unit})", $"Fresh in stock ({unit})", $"Re-melt in stock ({unit})", "Least fresh (%)",
        $"Fresh to use ({unit})", $"Re-melt to use ({unit})", $"To buy ({buying})",
    ];

    public static string[] FlaskHeadings(string unit) => ["Flask", "Alloy", $"Charge ({unit})", $"Fresh ({unit})", $"Re-melt ({unit})", "Made up from"];

    // What a flask's metal is made up from.
    public static string StockNotTyped => "type what you have of it on the Alloys sheet";

    public static string NotEnough => "not enough in stock";

    // What an alloy is for.
    public static string Flasks(IReadOnlyCollection<string> letters) =>
        letters.Count switch { 0 => "all poured", 1 => $"flask {letters.First()}", _ => $"flasks {string.Join(", ", letters)}" };

    public static string Pieces(string mass) => $"pieces {mass}";

    public static string PiecesOrFinished(string pieces, string finished) =>
        $"pieces {pieces} if the weights are of patterns, {finished} if of finished metal";

    public static string Between(string least, string most) => $"{least} to {most}";

    public static string PiecesAtLeast(string least) => $"pieces {least} without the rows that are open";

    public static string PiecesNotKnown => "pieces not known yet";
}
