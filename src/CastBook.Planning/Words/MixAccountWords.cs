namespace CastBook.Planning.Words;

/// <summary>The accounts of the Mixes sheet.</summary>
internal static class MixAccountWords
{
    public static string StepsHold => "flasks that stand under one bell together; the maker's data sheet comes first";

    public static string NumberRule => "as few mixes as bowl and working time allow, one water ratio to a mix, in the order of their first flask";

    // Its powder and its water.
    public static string Powder => "Powder of the mix";

    public static string PowderRule(bool byMoulds, bool byCharts) =>
        $"{(byMoulds ? "(moulds + waste) ÷ (1 ÷ powder density + water per 100 ÷ 100)" : "")}{(byMoulds && byCharts ? ", " : "")}{(byCharts ? "powder by the shop's charts" : "")}";

    public static string MouldOf(string flask) => $"mould of flask {flask}";

    public static string InsideLess => "its inside less tree and cup";

    public static string PowderOf(string flask) => $"powder of flask {flask}";

    public static string Water => "Water of the mix";

    public static string PowderAsRounded => "the powder of the mix, as rounded";

    // The slurry.
    public static string Slurry => "Slurry";

    public static string SlurryRule => "powder ÷ powder density + water";

    public static string SlurryHolds => "a mix before its air rises; under vacuum it stands about twice as high for a while";

    public static string PowderOfMix => "the powder of the mix";

    public static string WaterOfMix => "the water of the mix";

    // Its minutes.
    public static string Takes => "Takes";

    public static string TakesRule => "mixing + bowl vacuum + flasks × filling + flask vacuum";

    public static string PourDoneBy => "Pour done by";

    public static string PourDoneByRule => "working time − margin before gloss-off − flask vacuum";

    public static string GlossOff => "Gloss-off";

    public static string GlossOffRule => "the working time of the powder, from the first powder in the water";

    public static string GlossOffHolds => "the water temperature and ratio of the maker's data sheet; warmer water shortens it";
}
