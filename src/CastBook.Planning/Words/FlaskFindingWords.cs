namespace CastBook.Planning.Words;

/// <summary>What findings about flasks, crucibles and trees say beside their numbers.</summary>
internal static class FlaskFindingWords
{
    // The size of a tree that is built.
    public static string SizeNotSaid => "is not said";

    public static string SizeNotOnSheet(string size) => $"\"{size}\" is not on the Flasks sheet";

    // A crucible's rating.
    public static string RatingOfNoMetal => "the metal of the rating is not said";

    public static string RatingOfNoOneMetal(string name) => $"\"{name}\" does not name one metal";

    // Why a wished flask is refused.
    public static string NoLetter(string typed) => $"\"{typed}\" is not a flask's letter; they run A, B … Z, AA.";

    public static string TreeBuilt => "Its tree is built already.";

    public static string FlaskOfAlloy(string alloy) => $"That flask is for {alloy}.";

    public static string StonesApart => "Pieces with stones in share a flask only with each other.";

    public static string NoRoom => "There is no room for them in it.";

    public static string WithStonesIn(string alloy) => $"{alloy} with stones in";

    // What a row of the Flasks sheet lacks.
    public static string NumberOwned => "number owned";

    public static string InsideDiameter => "inside diameter";

    public static string Height => "height";

    public static string SprueDiameter => "sprue diameter";

    public static string BaseHeight => "base height";

    // The headings of the Flasks sheet under which these are typed.
    public static string HeadingOf(string measure) => measure == NumberOwned ? "Owned" : string.Concat(measure[..1].ToUpperInvariant(), measure.AsSpan(1));

    public static string NoHeight(string height, string foot, string above) => $"{height} of height less {foot} of base and {above} above the tree";

    public static string NoWidth(string inside, string wall, string trunk) => $"{inside} inside less {wall} to the wall and {trunk} of trunk";

    // Gates.
    public static string GateLengths(string shortest, string longest) => $"{shortest} to {longest}, whichever hangs more";

    public static string GatesTooThin => "They freeze before the piece is fed, and it shrinks open.";

    public static string GatesTooThick => "They stay liquid longer than the piece and draw metal out of it.";
}
