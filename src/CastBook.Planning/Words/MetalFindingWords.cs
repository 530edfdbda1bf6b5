namespace CastBook.Planning.Words;

/// <summary>What findings about alloys and metal say beside their numbers.</summary>
internal static class MetalFindingWords
{
    // How far a density by the mixing rule is off.
    public static string DenserThanMixed(string most) => $"measured alloys are up to {most} denser than that, and take as much more metal";

    public static string NeverCompared => "nobody has compared that with measured alloys, and the metal follows from it";

    // A mark that no parts per thousand stand behind.
    public static string NoMark => "nothing";

    // What brings an alloy up to its mark, behind what else helps.
    public static string RaisedWith(string parts, string element) => $"; {parts} parts by weight of fine {element} to each 100 of it make good what is missing";

    // Why an alloy cannot have its density.
    public static string CompositionMakes(string density) => $"its composition makes {density}";

    public static string AlloysRun(string least, string most) => $"alloys that are cast run from {least} to {most} g/cm³";

    // What a weight would be in metal, where nobody says what was weighed.
    public static string TimesItsWeight => "9 to 16 times its weight in silver or gold";

    public static string OfAlloy(string metal, string alloy) => $"{metal} of {alloy}";

    // Metal that does not do, behind the mass that is needed.
    public static string ForPiecesAlone => " for the pieces alone";

    public static string AtLeastForPiecesAlone => " at least for the pieces alone";

    // Names that are open.
    public static string AnswerFor(string answer, string names) => $"{answer}, the answer for {names}";

    public static string NamesAll(string count) => $", which names all {count}";

    public static string OneOfMore(string count) => $"one of {count} more";
}
