namespace CastBook.Planning.Words;

/// <summary>The accounts of a flask: its pieces, its charge and its burnout.</summary>
internal static class FlaskAccountWords
{
    // Its pieces.
    public static string Pieces => "Pieces";

    public static string PiecesOfRows => "the pieces of its rows";

    // Its charge.
    public static string Charge => "Charge";

    public static string ChargeRule(bool weighed) => $"({(weighed ? "weighed tree in metal" : "pieces + trunk and gates")} + button) × (1 + melt loss)";

    public static string ChargeHolds => "one alloy to a flask; weighing the tree takes the place of the estimate";

    public static string Button => "button";

    public static string ButtonRule => "the larger of its share of pieces and tree and its least volume";

    public static string Loss => "loss";

    // A tree as estimated.
    public static string PiecesMetal => "pieces";

    public static string MetalOnList => "the metal of its pieces on the list";

    public static string TrunkAndGates => "trunk and gates";

    public static string Estimated(string trunk) => $"estimated: a trunk of {trunk}, the rest gates";

    // A tree as weighed.
    public static string TreeOnBase => "tree on base";

    public static string Base => "base";

    public static string OfItWax => "of it wax";

    public static string TreeByDensities => "its wax by the density of sprue wax, the rest by that of its patterns";

    // Its burnout.
    public static string Burnout => "Burnout";

    public static string BurnoutHolds => "kilns that follow the schedule; set, hold and soak are never shortened";

    public static string Stages(string schedule) => $"the stages of \"{schedule}\", ways and holds";

    public static string StagesAsRun(string schedule, string load) =>
        $"the stages of \"{schedule}\" as the kiln runs them, ways and holds, to the first pour of load {load}";

    public static string PublishedSchedule => "published schedule; for resin with hours added by common practice";

    public static string FlaskSize => "flask size";

    public static string BurntOutAs => "burnt out as";

    public static string StonesIn => "stones in";

    public static string Wax => "wax";

    public static string Resin => "resin";

    public static string MaterialsOfPieces => "the materials of its pieces";

    public static string KilnLoad => "kiln load";

    public static string StandTogether => "the flasks that stand in the kiln together; they run the longest of their schedules";

    public static string KilnCools => "kiln cools";

    public static string AnHour(string degrees) => $"{degrees}/h";

    public static string KilnsSheetOr(string usual) => $"the Kilns sheet, or {usual} where it does not say";

    public static string SlowestPouredFirst => "slowest mould poured first";

    public static string LastHold => "the last hold is as long as its core needs, if that is longer than the schedule's";
}
