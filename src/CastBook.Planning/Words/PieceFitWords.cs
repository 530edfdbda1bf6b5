namespace CastBook.Planning.Words;

/// <summary>Why a piece fits no flask, and what would make room for it.</summary>
internal static class PieceFitWords
{
    // What is in the way.
    public static string PerTreeNamesNone => "\"Per tree\" names no flask size that the shop owns";

    public static string ReachesOut(string reach, string size, string room) =>
        $"it reaches {reach} out from the middle of the trunk, and the largest flask, \"{size}\", leaves {room}";

    public static string NeedsTrunk(string along, string size, string trunk) => $"it needs {along} of trunk, and the largest flask, \"{size}\", has {trunk}";

    // Why that is so.
    public static string PerTreeDecides => "Its sizes are not known, so the number per tree decides.";

    public static string WallStays(string wall) => $"{wall} of investment must stay between piece and wall.";

    public static string RestOfHeight => "The rest of the height is the base and the investment above the tree.";

    // The ways out, each a sentence with a blank behind it.
    public static string OnLongSide(string size) => $"Gated on its long side, with length and width exchanged, it would fit \"{size}\". ";

    public static string Upright(string size) => $"Upright and alone it would fit \"{size}\": clear its sizes and type \"{size}: 1\" as \"Per tree\". ";

    public static string Tilted(string degrees, string size) => $"With {degrees} as \"Gate angle\" on the Shop sheet it would fit \"{size}\". ";
}
