using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>How a number of a piece is read: what it measures, what a sentence calls it, and what is taken for a slip.</summary>
/// <param name="Field">The field.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Called">What a sentence calls it.</param>
/// <param name="Unit">The unit a sentence names.</param>
/// <param name="Most">More than this, in the base unit, is taken for a slip.</param>
/// <param name="MayBeZero">Whether zero is a value.</param>
/// <param name="Kind">The finding for a text that is no number.</param>
internal sealed record FieldLook(string Field, Dimension Dimension, string Called, string Unit, double Most, bool MayBeZero, FindingKind Kind)
{
    private const double MostGrams = 5_000;
    private const double MostMillilitres = 5_000;
    private const double MostMillimetres = 1_000;
    private const double MostDegrees = 2_000;
    private const double MostMinutes = 10_000;
    private const double MostPieces = 10_000;

    public static FieldLook Quantity { get; } =
        new(PieceField.Quantity, Dimension.None, CellNameWords.Quantity, CellNameWords.UnitOfPieces, MostPieces, false, Catalogue.QuantityNotANumber);

    public static FieldLook Mass { get; } =
        new(PieceField.PatternMass, Dimension.Mass, CellNameWords.Weight, "g", MostGrams, false, Catalogue.WeightNotANumber);

    public static FieldLook Volume { get; } =
        new(PieceField.PatternVolume, Dimension.Volume, CellNameWords.Volume, "ml", MostMillilitres, false, Catalogue.WeightNotANumber);

    public static FieldLook Gates { get; } =
        new(PieceField.Gates, Dimension.None, CellNameWords.Gates, CellNameWords.UnitOfGates, 100, false, Catalogue.ValueNotANumber);

    public static FieldLook PrintedAt { get; } =
        new(PieceField.PrintedAt, Dimension.Temperature, CellNameWords.PrintedAt, "°C", MostDegrees, true, Catalogue.ValueNotANumber);

    public static FieldLook Washed { get; } = Time(PieceField.Washed, CellNameWords.Washed);

    public static FieldLook Cured { get; } = Time(PieceField.Cured, CellNameWords.Cured);

    public static FieldLook Size(string field, string called) =>
        new(field, Dimension.Length, called, "mm", MostMillimetres, false, Catalogue.ValueNotANumber);

    private static FieldLook Time(string field, string called) =>
        new(field, Dimension.Time, called, "min", MostMinutes, true, Catalogue.ValueNotANumber);
}
