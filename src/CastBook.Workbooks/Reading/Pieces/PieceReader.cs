using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using UnitsNet;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Reads rows of the list as pieces.</summary>
/// <param name="cells">The cells by field.</param>
/// <param name="materialOfWeights">The material that the weight's heading tells of; missing where it tells of none.</param>
/// <param name="grid">The sheet, for our own Flask column.</param>
/// <param name="flaskColumn">Our own Flask column; missing where the book has none.</param>
internal sealed class PieceReader(PieceCells cells, string? materialOfWeights, SheetGrid grid, int? flaskColumn)
{
    private static readonly FieldLook Length = FieldLook.Size(PieceField.Length, "length");
    private static readonly FieldLook Width = FieldLook.Size(PieceField.Width, "width");
    private static readonly FieldLook Thickness = FieldLook.Size(PieceField.Thickness, "thickness");
    private static readonly FieldLook Finest = FieldLook.Size(PieceField.FinestSection, "finest section");
    private static readonly FieldLook Heaviest = FieldLook.Size(PieceField.HeaviestSection, "heaviest section");
    private static readonly FieldLook GateDiameter = FieldLook.Size(PieceField.GateDiameter, "gate diameter");
    private static readonly FieldLook GateLength = FieldLook.Size(PieceField.GateLength, "gate length");

    /// <summary>Reads a row.</summary>
    /// <param name="row">The row on the sheet.</param>
    /// <param name="id">The piece's id.</param>
    /// <param name="alloyOfSection">The alloy that its section line names; missing where none does.</param>
    public Piece Read(int row, int id, string? alloyOfSection)
    {
        cells.Begin(row, id);
        var (done, leaveOut) = (cells.IsDone(), cells.YesOrNo(PieceField.LeaveOut, static () => Catalogue.YesNoUnreadable));
        cells.IsLeftAlone = done || leaveOut;
        var quantity = cells.Whole(FieldLook.Quantity);
        var piece = new Piece
        {
            Id = id,
            Name = cells.Text(PieceField.Piece, "name") ?? "",
            Quantity = quantity,
            Weight = cells.Number(FieldLook.Mass) is { } grams ? Mass.FromGrams(grams) : null,
            PatternVolume = cells.Number(FieldLook.Volume) is { } millilitres ? Volume.FromMilliliters(millilitres) : null,
            Material = cells.Text(PieceField.Material, "material") ?? materialOfWeights,
            Alloy = cells.Text(PieceField.Alloy, "alloy") ?? alloyOfSection,
            Box = Box(),
            FinestSection = Millimetres(Finest),
            HeaviestSection = Millimetres(Heaviest),
            Gate = Gate(),
            StonesIn = cells.YesOrNo(PieceField.StonesIn, static () => Catalogue.StonesUnreadable),
            PerTree = PerTree(),
            Print = Print(),
            Due = cells.Day(PieceField.Due),
            Night = cells.Night(),
            Done = done,
            LeaveOut = leaveOut,
            Customer = cells.Words(PieceField.Customer),
            KeepInFlask = cells.Text(PieceField.KeepInFlask, "flask to keep it in"),
            LastFlasks = flaskColumn is { } column ? FlaskShares.Parse(grid.Cell(row, column).Text, quantity) : [],
        };
        return cells.Unreadable is { Count: > 0 } unreadable ? piece with { Unreadable = unreadable } : piece;
    }

    private Length? Millimetres(FieldLook look) => cells.Number(look) is { } millimetres ? UnitsNet.Length.FromMillimeters(millimetres) : null;

    private PieceBox? Box()
    {
        var shape = cells.Text(PieceField.Shape, "shape");
        var (length, width, thickness) = (Millimetres(Length), Millimetres(Width), Millimetres(Thickness));
        var inOne = length is null || width is null || thickness is null ? cells.Sizes() : [];
        length ??= At(0);
        width ??= At(1);
        thickness ??= At(2);
        var isRing = shape is not null && shape.Contains("ring", StringComparison.OrdinalIgnoreCase);
        return length is { } l && width is { } w ? new PieceBox(isRing, l, w, thickness) : null;

        Length? At(int place) => place < inOne.Count ? UnitsNet.Length.FromMillimeters(inOne[place]) : null;
    }

    private PieceGate? Gate()
    {
        var (count, diameter, length) = (cells.Whole(FieldLook.Gates), Millimetres(GateDiameter), Millimetres(GateLength));
        return count is null && diameter is null && length is null ? null : new PieceGate(count, diameter, length);
    }

    private PiecePrint? Print()
    {
        var (printedAt, washed, cured) = (cells.Number(FieldLook.PrintedAt), cells.Number(FieldLook.Washed), cells.Number(FieldLook.Cured));
        return printedAt is null && washed is null && cured is null
            ? null
            : new PiecePrint(
                printedAt is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null,
                washed is { } wash ? Duration.FromMinutes(wash) : null,
                cured is { } cure ? Duration.FromMinutes(cure) : null);
    }

    private IReadOnlyDictionary<string, int>? PerTree()
    {
        var text = cells.Text(PieceField.PerTree, "number per tree");
        if (text is null)
        {
            return null;
        }

        var counts = PerTreeText.Parse(text);
        if (counts is null)
        {
            cells.Fail(Catalogue.PerTreeUnreadable, PieceField.PerTree, text);
        }

        return counts;
    }
}
