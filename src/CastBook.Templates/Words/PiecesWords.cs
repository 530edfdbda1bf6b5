namespace CastBook.Templates.Words;

/// <summary>What the sheet Pieces says of itself and what is typed in its columns.</summary>
internal static class PiecesWords
{
    public static string Purpose => "What is to be cast, a line a piece.";

    public static string Piece => "The piece's name or job number, as you call it.";

    public static string Qty => "How many to cast, a whole number.";

    public static string PatternWeight => "Weight of one pattern as it goes on the tree: printed and cured or waxed, supports off, without sprue. Or give its volume.";

    public static string PatternVolume => "Volume of one pattern, as the drawing program gives it. It wins over the weight.";

    public static string Material => "What the pattern is made of: a name of the Materials sheet. Empty: the material of the Shop sheet.";

    public static string Alloy => "The metal to cast it in: a name of the Alloys sheet.";

    public static string Shape => "ring: length is the outer diameter and width the band. other: length, width and thickness.";

    public static string Length => "From the gate outwards; for a ring its outer diameter.";

    public static string Width => "Across the piece; for a ring the width of the band.";

    public static string Thickness => "The third size. Empty: taken as wide as the width.";

    public static string FinestSection => "The thinnest place that must fill. It decides the flask temperature.";

    public static string HeaviestSection => "The thickest place. It decides the flask temperature.";

    public static string Gates => "How many gates the piece hangs on. Empty: one.";

    public static string GateDiameter => "Diameter of one gate. Empty: the gate of the Shop sheet.";

    public static string GateLength => "Length of one gate. Empty: the gate of the Shop sheet.";

    public static string StonesIn => "yes where stones are set in the pattern.";

    public static string PerTree => "Where sizes are unknown: how many fit on a tree. 12 for any flask, or a flask size and a number: 75 × 100: 12; 90 × 125: 20.";

    public static string PrintedAt => "Temperature of the resin while printing.";

    public static string Washed => "Time in the wash; of several baths each, such as 1.5 + 1.5.";

    public static string Cured => "Cure of each side.";

    public static string Due => "The day it must be ready, such as 4 Dec 2026.";

    public static string Night => "Which casting night the line belongs to, in your own words. Empty everywhere: all lines are for tonight.";

    public static string KeepInFlask => "A flask letter: pieces with the same letter go into the same flask.";

    public static string LeaveOut => "yes to leave the line out tonight.";
}
