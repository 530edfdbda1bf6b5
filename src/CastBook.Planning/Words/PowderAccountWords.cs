namespace CastBook.Planning.Words;

/// <summary>The accounts of powder and water, of a flask and of a mix, and what they are worked out from.</summary>
internal static class PowderAccountWords
{
    public static string RangeHolds => "30 to 50 parts of water to 100 of powder; the maker's data sheet comes first";

    // Of a flask.
    public static string Powder => "Powder";

    public static string Water => "Water";

    public static string ByChart => "as the shop's chart for this flask size says";

    public static string PowderRule => "(flask inside − tree and cup + waste) ÷ (1 ÷ powder density + water per 100 ÷ 100)";

    public static string WaterRule => "powder × water per 100 ÷ 100";

    public static string FlaskInside => "flask inside";

    public static string Cup => "cup";

    public static string FromWeighedTree => "from the weighed tree";

    public static string EstimatedTree => "pieces, gates and trunk, estimated";

    public static string PowderOfFlask => "the powder of the same flask, as rounded";

    // What is mixed.
    public static string PowderMass => "powder";

    public static string WaterVolume => "water";

    public static string PowderDensity => "powder density";

    public static string BetweenComponents => "between those of its published components";

    public static string Waste => "waste";

    public static string WasteShare(string share, string least) => $"{share}, at least {least}";

    public static string FromMemory => "from memory of practice";

    public static string WaterPer100 => "water per 100";

    public static string PracticeForWax => "common practice for wax";

    public static string PracticeForResin => "common practice for resin";

    public static string WorkingTime => "working time";
}
