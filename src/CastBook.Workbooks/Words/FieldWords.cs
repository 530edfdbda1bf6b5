using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Words;

/// <summary>The fields of a piece in words, as a Checks cell uses them.</summary>
public static class FieldWords
{
    /// <summary>The word of a field, a constant of <see cref="PieceField"/>; the row as a whole is <c>piece</c>.</summary>
    /// <param name="field">The field, or empty.</param>
    public static string Of(string field) => field switch
    {
        PieceField.Quantity => "quantity",
        PieceField.PatternMass => "weight",
        PieceField.PatternVolume => "volume",
        PieceField.Material => "material",
        PieceField.Alloy => "alloy",
        PieceField.Shape => "shape",
        PieceField.Length => "length",
        PieceField.Width => "width",
        PieceField.Thickness => "thickness",
        PieceField.Sizes => "sizes",
        PieceField.FinestSection => "finest section",
        PieceField.HeaviestSection => "heaviest section",
        PieceField.Gates => "gates",
        PieceField.GateDiameter => "gate diameter",
        PieceField.GateLength => "gate length",
        PieceField.StonesIn => "stones",
        PieceField.PerTree => "per tree",
        PieceField.PrintedAt => "printed at",
        PieceField.Washed => "washed",
        PieceField.Cured => "cured",
        PieceField.Due => "due",
        PieceField.Night => "night",
        PieceField.Done => "done",
        PieceField.Customer => "customer",
        PieceField.KeepInFlask => "keep in flask",
        PieceField.LeaveOut => "leave out",
        OwnName.MetalEach => "metal each",
        OwnName.Metal => "metal",
        OwnName.Flask => "flask",
        OwnName.Mix => "mix",
        OwnName.Burnout => "burnout",
        _ => "piece",
    };
}
