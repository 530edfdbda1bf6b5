namespace CastBook.Planning.Shops;

/// <summary>The settings of the Shop sheet, by the names that stand in its first column.</summary>
public static class SettingName
{
    /// <summary>What the weight column means: <c>pattern</c> or <c>finished metal</c>. Asked, never assumed.</summary>
    public const string WeightsAreOf = "Weights are of";

    /// <summary>What else is in the weights: <c>piece alone</c> or <c>gates too</c>.</summary>
    public const string WeightsInclude = "Weights include";

    /// <summary>Share of a pattern's weight that is supports, cut off before the tree (%).</summary>
    public const string SupportsShare = "Supports share";

    /// <summary>Whether metal is corrected by castings that were weighed: <c>yes</c> or <c>no</c>.</summary>
    public const string LearnFromCastings = "Learn from castings";

    /// <summary>How many to cast of each row of a list without a column for the quantity.</summary>
    public const string QuantityWhereNone = "Quantity where the list gives none";

    /// <summary>The alloy of every row of a list without a column for the alloy.</summary>
    public const string AlloyWhereNone = "Alloy where the list gives none";

    /// <summary>The material of rows that name none: a name of the Materials sheet, or <c>wax</c> or <c>resin</c>.</summary>
    public const string PatternMaterial = "Pattern material";

    /// <summary>Density of the material of rows that name none (g/cm³).</summary>
    public const string PatternDensity = "Pattern density";

    /// <summary>Density of the wax that trunks and gates are built of (g/cm³).</summary>
    public const string SprueWaxDensity = "Sprue wax density";

    /// <summary>How the shop casts: <c>vacuum perforated</c>, <c>vacuum solid</c>, <c>spin</c> or <c>gravity</c>.</summary>
    public const string CastingMethod = "Casting method";

    /// <summary>Volume of the crucible when there is no Crucibles sheet (ml).</summary>
    public const string CrucibleHolds = "Crucible holds";

    /// <summary>The investment powder in use when the Investments sheet has several.</summary>
    public const string Investment = "Investment";

    /// <summary>The least button, as a percentage of pieces and tree.</summary>
    public const string ButtonShare = "Button share";

    /// <summary>The least button (ml).</summary>
    public const string ButtonAtLeast = "Button at least";

    /// <summary>Metal lost in melting, as a percentage.</summary>
    public const string MeltLoss = "Melt loss";

    /// <summary>The least share of fresh metal in a melt, as a percentage.</summary>
    public const string FreshAtLeast = "Fresh at least";

    /// <summary>The unit in which the shop buys metal.</summary>
    public const string MetalBoughtIn = "Metal bought in";

    /// <summary>The unit in which metal is written.</summary>
    public const string MetalIn = "Metal in";

    /// <summary>The unit in which powder is written.</summary>
    public const string PowderIn = "Powder in";

    /// <summary>The unit in which water and slurry are written.</summary>
    public const string WaterIn = "Water in";

    /// <summary>The scale in which temperatures are written.</summary>
    public const string TemperaturesIn = "Temperatures in";

    /// <summary>The unit in which lengths are written.</summary>
    public const string LengthsIn = "Lengths in";

    /// <summary>What a plan is to save, first things first.</summary>
    public const string OrderOfWishes = "Order of wishes";

    /// <summary>What becomes of a plan that stands in the book already.</summary>
    public const string WhenLittleChanged = "When little changed";

    /// <summary>The step charges are rounded up to (g).</summary>
    public const string ChargeStep = "Charge step";

    /// <summary>The step powder is rounded up to (g).</summary>
    public const string PowderStep = "Powder step";

    /// <summary>The least gap between two pieces on a tree (mm).</summary>
    public const string GapBetweenPieces = "Gap between pieces";

    /// <summary>Length of a gate where the piece names none (mm).</summary>
    public const string GateLength = "Gate length";

    /// <summary>Diameter of a gate where the piece names none (mm).</summary>
    public const string GateDiameter = "Gate diameter";

    /// <summary>Angle between trunk and pieces (degrees).</summary>
    public const string GateAngle = "Gate angle";

    /// <summary>Volume of the bowl that investment is mixed in, to the brim (ml).</summary>
    public const string MixingBowl = "Mixing bowl";

    /// <summary>How full the bowl may be, as a percentage; slurry rises under vacuum.</summary>
    public const string BowlFill = "Bowl fill";

    /// <summary>Mixing powder into water (min).</summary>
    public const string MixingTakes = "Mixing takes";

    /// <summary>The bowl under vacuum (min).</summary>
    public const string BowlVacuum = "Bowl vacuum";

    /// <summary>Pouring the slurry into one flask (min).</summary>
    public const string FlaskFilling = "Filling a flask takes";

    /// <summary>The filled flasks of a mix under vacuum (min).</summary>
    public const string FlaskVacuum = "Flask vacuum";

    /// <summary>How long before gloss-off a mix must rest (min).</summary>
    public const string GlossOffMargin = "Margin before gloss-off";

    /// <summary>Steam before the kiln, for moulds of wax (min).</summary>
    public const string SteamDewax = "Steam dewax";

    /// <summary>Whether moulds that wait for the kiln are kept damp: <c>yes</c> or <c>no</c>.</summary>
    public const string KeptDamp = "Kept damp";

    /// <summary>Weighing out powder and water of a mix (min).</summary>
    public const string WeighingTakes = "Weighing a mix takes";

    /// <summary>Cleaning bowl and tools after a mix (min).</summary>
    public const string CleanUpTakes = "Cleaning up after a mix takes";

    /// <summary>Base off, rim cleaned and letter scratched in, of one flask (min).</summary>
    public const string BaseOffTakes = "Base off a flask takes";

    /// <summary>Loading the kiln (min).</summary>
    public const string LoadingTakes = "Loading the kiln takes";

    /// <summary>Melting and pouring one flask (min).</summary>
    public const string PouringTakes = "Pouring a flask takes";

    /// <summary>Quenching one flask (min).</summary>
    public const string QuenchingTakes = "Quenching a flask takes";

    /// <summary>When the first powder is weighed: a day and an hour, or an hour of the night that is asked for.</summary>
    public const string StartAt = "Start at";

    /// <summary>When the first flask is to be poured: a day and an hour.</summary>
    public const string PourAt = "Pour at";

    /// <summary>From which hour somebody is there.</summary>
    public const string AtWorkFrom = "At work from";

    /// <summary>Until which hour somebody is there.</summary>
    public const string AtWorkUntil = "At work until";

    /// <summary>The hours in which somebody is there, where they have a break or differ by day.</summary>
    public const string HoursOfWork = "Hours of work";

    /// <summary>Which steps take two people.</summary>
    public const string TwoPeopleFor = "Two people for";

    /// <summary>From which hour a second person is there.</summary>
    public const string SecondFrom = "Second person from";

    /// <summary>Until which hour a second person is there.</summary>
    public const string SecondUntil = "Second person until";

    /// <summary>Which steps that run by themselves are not left alone.</summary>
    public const string StayWith = "Stay with";

    /// <summary>On which days nobody is there, by day of the week or by date.</summary>
    public const string ClosedOn = "Closed on";

    /// <summary>Which flasks stand in the kiln together.</summary>
    public const string KilnLoads = "Kiln loads";

    /// <summary>How near the core of a mould must be to its kiln.</summary>
    public const string CoreTolerance = "Core tolerance";

    /// <summary>The least gap between flasks in the kiln, and to its wall (mm).</summary>
    public const string GapInKiln = "Gap in the kiln";

    /// <summary>Which night to plan, as the Night column writes it.</summary>
    public const string Night = "Night";

    /// <summary>Which sheets of pieces are filled, where the book has several: their names, or <c>all</c>.</summary>
    public const string SheetsToFill = "Sheets to fill";

    /// <summary>The question what an alloy's name means.</summary>
    /// <param name="name">The name as the rows write it.</param>
    public static string AlloyMeaning(string name) => $"Alloy \"{name}\" is";
}
