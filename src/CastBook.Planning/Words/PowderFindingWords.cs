namespace CastBook.Planning.Words;

/// <summary>What findings about investment powder, its water and its set say beside their numbers.</summary>
internal static class PowderFindingWords
{
    // A powder that has no name, within a sentence, at its begin, and as the title of what was taken for it.
    public static string Unnamed => "the investment";

    public static string UnnamedFirst => "The investment";

    public static string UnnamedTitle => "Investment";

    // What was taken where the shop says nothing.
    public static string GypsumBonded => "gypsum-bonded";

    public static string WaterOfFlasks(string parts, bool withResin) =>
        $"{parts} parts of water to 100 of powder, for {(withResin ? "flasks with resin in them" : "flasks of wax")}";

    public static string DensityOfGrains(string density) => $"{density} for the powder's grains";

    public static string TwoHoursOfSet => "2 h of set at least, from the last pour";

    public static string UpToGlossOff(string time) => $"{time} from the first powder in the water to gloss-off";
}
