namespace CastBook.Planning.Words;

/// <summary>What each setting is for, and what an empty cell means.</summary>
/// <remarks>Usual values that a setting names as such (<see cref="Shops.SettingGuide.Named"/>) are told in the shop's unit: they stand between blanks, or before a full stop.</remarks>
internal static class SettingWords
{
    public static string WeightsAreOf => "What the weight column weighs: the pattern, or the finished metal of an earlier casting.";

    public static string WeightsInclude => "Whether pieces are weighed with their gates on. Empty: the piece alone; gates are added.";

    public static string SupportsShare => "How much of a pattern's weight is supports that are cut off before the tree. Empty: none.";

    public static string LearnFromCastings =>
        "Whether metal is corrected by castings you weighed: type what one casting weighs, gates off, over Metal each; three lines or more of an alloy and a material count. Empty: no.";

    public static string QuantityWhereNone => "How many to cast of each line of a list that has no column for the quantity: 1 where every line is one piece. Empty: it is asked.";

    public static string AlloyWhereNone => "What all pieces of a list are cast in that has no column for the alloy, such as 14k yellow. Empty: it is asked.";

    public static string PatternMaterial => "Material of lines that name none: wax, resin, or a name of the Materials sheet.";

    public static string PatternDensity => "Density of that material: weigh a solid cube, divide by its measured volume.";

    public static string SprueWaxDensity => "Density of the wax that trunks and gates are built of. Empty: 0.95, and the plan says so.";

    public static string CastingMethod => "How you cast. It decides clearances and limits.";

    public static string CrucibleHolds =>
        "Volume of your crucible to the brim, where there is no Crucibles sheet. Water to the brim, weighed, tells it: 1 g is 1 ml. Dry it well afterwards.";

    public static string Investment => "The powder in use, where the Investments sheet has several.";

    public static string Night => "Which night to plan, where the Night column names several. Empty: the next by date.";

    public static string SheetsToFill => "Which sheets of pieces to fill, where there are several: their names with semicolons between them, or all. Empty: the one that fits best.";

    public static string OrderOfWishes =>
        "What a plan saves first, next and last, once due pieces are placed. Empty: flasks; investment; kiln loads; metal, of trunks and buttons; like thicknesses.";

    public static string WhenLittleChanged => "What filling again does with flasks planned before. Empty: keep; pieces stay in their flask as long as all fit. Worthwhile: they move where each saves 35 ml of investment (a flask counts as a litre). Best: where anything is saved.";

    public static string ButtonShare => "The least button, as a share of pieces and tree. Empty: 20.";

    public static string ButtonAtLeast => "The least button by volume. Empty: 1.5.";

    public static string MeltLoss => "Metal lost in melting. Empty: 1.";

    public static string FreshAtLeast => "The least share of fresh metal in a melt; the rest may be clean re-melt. Empty: 50.";

    public static string MetalBoughtIn => "The unit in which you buy metal. Empty: as metal is written.";

    public static string MetalIn => "The unit in which CastBook writes metal. Empty: that of the list's weights where all are in dwt or troy oz, else g.";

    public static string PowderIn => "The unit in which it writes powder; oz and lb are avoirdupois. Empty: that of the shop's own powder, else g.";

    public static string WaterIn => "The unit in which it writes water. Empty: ml, which a scale shows as g.";

    public static string TemperaturesIn =>
        "The unit in which it writes temperatures; the Kiln sheet has both. Empty: that of the book's own temperatures or of sizes in inches, else °C.";

    public static string LengthsIn => "The unit in which it writes lengths. Empty: that of the list's sizes, else mm.";

    public static string ChargeStep => "Charges are rounded up to this step of your scale. Empty: 1 g, 1 dwt or 0.05 troy oz, as metal is written.";

    public static string PowderStep => "Powder is rounded up to this step of your scale. Empty: 5 g, 0.01 lb or 0.2 oz, as powder is written.";

    public static string MixingBowl => "Volume of the bowl that investment is mixed in, to the brim. Empty: no mixes are planned.";

    public static string BowlFill => "How full the bowl may be; slurry rises under vacuum. Empty: 50.";

    public static string MixingTakes => "Mixing powder into water. Empty: 4.";

    public static string BowlVacuum => "The bowl under vacuum. Empty: 1.5.";

    public static string FlaskFilling => "Pouring the slurry into one flask. Empty: 0.5.";

    public static string FlaskVacuum => "The filled flasks of a mix under vacuum, together. Empty: 1.5.";

    public static string GlossOffMargin => "How long before gloss-off the flasks must rest. Empty: 1.5.";

    public static string SteamDewax => "Steam before the kiln, for moulds of wax only; an hour at most. Empty: none.";

    public static string KeptDamp => "Whether moulds that wait for the kiln are bagged damp once they have set; they keep a week then. Empty: no, and they keep a day.";

    public static string StartAt => "When you begin to weigh powder, such as 2026-11-25 20:00. Empty: the clock counts from the first step.";

    public static string PourAt => "When the first flask is to be poured, with its day; it wins over \"Start at\". Empty: as early as the start allows.";

    public static string WeighingTakes => "Weighing out powder and water of a mix. Empty: 5.";

    public static string CleanUpTakes => "Cleaning bowl and tools after a mix. Empty: 5.";

    public static string BaseOffTakes => "Taking the base off a flask, cleaning its rim and scratching its letter in. Empty: 3.";

    public static string LoadingTakes => "Loading the kiln. Empty: 10.";

    public static string PouringTakes => "Melting and pouring one flask. Empty: 10.";

    public static string QuenchingTakes => "Quenching one flask. Empty: 3.";

    public static string AtWorkFrom => "From which hour somebody is there, such as 07:00. Empty: at any hour.";

    public static string AtWorkUntil => "Until which hour somebody is there, such as 23:00. Empty: at any hour.";

    public static string HoursOfWork => "The same with a break, or where days differ: 08:00-12:00, 13:30-19:00; Friday 08:00-14:00. It wins over both. Empty: those two.";

    public static string ClosedOn => "Days on which nobody is there, with commas: Saturday, Sunday, 2026-12-24 to 2027-01-02. Empty: none.";

    public static string TwoPeopleFor => "Steps that take two people, with commas: mix, base off, load, pour, quench. Empty: none.";

    public static string SecondFrom => "From which hour the second person is there, such as 08:00. Empty: whenever the first is.";

    public static string SecondUntil => "Until which hour the second person is there, such as 17:00. Empty: whenever the first is.";

    public static string StayWith => "What runs by itself and is still not left alone, with commas: steam, burnout. Empty: nothing.";

    public static string KilnLoads => "Which flasks stand in the kiln together, load by load, such as A B; C D. Empty: as many as fit, the most demanding first.";

    public static string CoreTolerance => "How near the middle of a mould must be to the kiln when a hold ends. Empty: 20 before a pour, 25 at the top.";

    public static string GapInKiln => "The least gap between flasks in the kiln, and to its wall. Empty: 20.";

    public static string GapBetweenPieces => "The least gap between two pieces on a tree. Empty: 3.";

    public static string GateLength => "Length of a gate where the piece names none. Empty: at most 7.";

    public static string GateDiameter => "Diameter of a gate where the piece names none. Empty: 3.";

    public static string GateAngle => "Angle between trunk and pieces. Empty: 50.";

    // Which alloy is meant by a name in the list.
    public static string AlloyMeant(IEnumerable<string> alloys) => $"Which alloy the rows mean: {string.Join("; ", alloys)}; or a name of the Alloys sheet.";

    public static string AlloyMeantByName => "Which alloy the rows mean, by a name of the Alloys sheet or of the Checks sheet.";

    public static string DensityAndPour(string density, string metal) => $" ({density}, poured at {metal})";

    public static string Pour(string metal) => $" (poured at {metal})";
}
