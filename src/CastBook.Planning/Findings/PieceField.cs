namespace CastBook.Planning.Findings;

/// <summary>
/// The fields of a piece, by the names that settings use too
/// (<c>"columns": {"patternMass": ["Peso modelo"]}</c>).
/// </summary>
#pragma warning disable CS1591 // Missing XML comment: the constants say themselves.
public static class PieceField
{
    public const string Piece = "piece";
    public const string Quantity = "quantity";
    public const string PatternMass = "patternMass";
    public const string PatternVolume = "patternVolume";
    public const string Material = "material";
    public const string Alloy = "alloy";
    public const string Shape = "shape";
    public const string Length = "length";
    public const string Width = "width";
    public const string Thickness = "thickness";
    public const string Sizes = "sizes";
    public const string FinestSection = "finestSection";
    public const string HeaviestSection = "heaviestSection";
    public const string Gates = "gates";
    public const string GateDiameter = "gateDiameter";
    public const string GateLength = "gateLength";
    public const string StonesIn = "stonesIn";
    public const string PerTree = "perTree";
    public const string PrintedAt = "printedAt";
    public const string Washed = "washed";
    public const string Cured = "cured";
    public const string Due = "due";
    public const string Night = "night";
    public const string Done = "done";
    public const string Customer = "customer";
    public const string KeepInFlask = "keepInFlask";
    public const string LeaveOut = "leaveOut";
}
