using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;
using UnitsNet;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Puts pieces together from the cells of their rows.</summary>
/// <param name="cells">The cells, read by field.</param>
/// <param name="sheet">The list.</param>
/// <param name="materialOfWeights">The material that the heading of the weights tells of; missing where it tells of none.</param>
/// <param name="usualQuantity">The quantity of every row, where the list has no column for it.</param>
/// <param name="others">The columns that are no field.</param>
internal sealed class PieceReader(PieceCells cells, PieceSheet sheet, string? materialOfWeights, int? usualQuantity, UnreadColumns others)
{
    private static readonly FieldLook Length = FieldLook.Size(PieceField.Length, CellNameWords.Length);
    private static readonly FieldLook Width = FieldLook.Size(PieceField.Width, CellNameWords.Width);
    private static readonly FieldLook Thickness = FieldLook.Size(PieceField.Thickness, CellNameWords.Thickness);
    private static readonly FieldLook Finest = FieldLook.Size(PieceField.FinestSection, CellNameWords.FinestSection);
    private static readonly FieldLook Heaviest = FieldLook.Size(PieceField.HeaviestSection, CellNameWords.HeaviestSection);
    private static readonly FieldLook GateDiameter = FieldLook.Size(PieceField.GateDiameter, CellNameWords.GateDiameter);
    private static readonly FieldLook GateLength = FieldLook.Size(PieceField.GateLength, CellNameWords.GateLength);

    // Our own Flask column; 0 where the book has none.
    private readonly int flaskColumn = sheet.OwnColumns.GetValueOrDefault(OwnName.Flask);
    private readonly Dictionary<string, bool?> rings = new(StringComparer.Ordinal);

    /// <summary>The columns that are no field.</summary>
    public UnreadColumns Others { get; } = others;

    /// <summary>What names tell of rows that say something else.</summary>
    public NameChecks Names { get; } = new();

    /// <summary>Reads a row.</summary>
    /// <param name="row">The row on the sheet.</param>
    /// <param name="id">The piece's id.</param>
    /// <param name="alloyBesides">The alloy that its section line names, or the shop for the whole list; missing where neither does.</param>
    public Piece Read(int row, int id, string? alloyBesides)
    {
        cells.Begin(row, id);
        var (done, leaveOut) = cells.Standing();
        cells.IsLeftAlone = done || leaveOut;
        var quantity = usualQuantity ?? cells.Counted(cells.Whole(FieldLook.Quantity), Others.Counted(row));
        var piece = new Piece
        {
            Id = id,
            Name = cells.Text(PieceField.Piece, CellNameWords.Name) ?? "",
            Quantity = quantity,
            Weight = cells.Number(FieldLook.Mass) is { } grams ? Mass.FromGrams(grams) : null,
            PatternVolume = cells.Number(FieldLook.Volume) is { } millilitres ? Volume.FromMilliliters(millilitres) : null,
            Material = cells.Text(PieceField.Material, CellNameWords.Material) ?? materialOfWeights,
            Alloy = cells.Text(PieceField.Alloy, CellNameWords.Alloy) ?? alloyBesides,
            Box = Box(),
            FinestSection = Millimetres(Finest),
            HeaviestSection = Millimetres(Heaviest),
            Gate = Gate(),
            StonesIn = cells.YesOrNo(PieceField.StonesIn, static () => Catalogue.StonesUnreadable),
            PerTree = PerTree(),
            Remark = Others.Remark(row, cells.Says(PieceField.StonesIn), cells.Says(PieceField.Done), cells.Says(PieceField.LeaveOut)),
            Print = Print(),
            Due = cells.Day(PieceField.Due),
            Night = cells.Night(),
            Done = done,
            LeaveOut = leaveOut,
            Customer = cells.Words(PieceField.Customer),
            KeepInFlask = cells.Text(PieceField.KeepInFlask, CellNameWords.KeepInFlask),
            LastFlasks = flaskColumn > 0 ? FlaskShares.Parse(sheet.Grid.Cell(row, flaskColumn).Text, quantity) : [],
        };
        if (!done && !leaveOut)
        {
            Names.Look(piece, cells.Says(PieceField.Shape));
        }

        return cells.Unreadable is { Count: > 0 } unreadable ? piece with { Unreadable = unreadable } : piece;
    }

    private Length? Millimetres(FieldLook look) => cells.Number(look) is { } millimetres ? UnitsNet.Length.FromMillimeters(millimetres) : null;

    private PieceBox? Box()
    {
        var shape = cells.Text(PieceField.Shape, CellNameWords.Shape);
        var (length, width, thickness) = (Millimetres(Length), Millimetres(Width), Millimetres(Thickness));
        var inOne = length is null || width is null || thickness is null ? cells.Sizes() : [];
        length ??= At(0);
        width ??= At(1);
        thickness ??= At(2);
        return length is { } l && width is { } w ? new PieceBox(shape is not null && CountsAsRing(shape), l, w, thickness) : null;

        Length? At(int place) => place < inOne.Count ? UnitsNet.Length.FromMillimeters(inOne[place]) : null;
    }

    // A long list has few shapes, each in very many rows.
    private bool CountsAsRing(string shape)
    {
        if (!rings.TryGetValue(shape, out var isRing))
        {
            rings[shape] = isRing = AnswerWords.IsRing(shape);
        }

        if (isRing is null)
        {
            cells.TakeAsBox(shape);
        }

        return isRing ?? false;
    }

    private PieceGate? Gate()
    {
        var (count, diameter, length) = (cells.Whole(FieldLook.Gates), Millimetres(GateDiameter), Millimetres(GateLength));
        return count is null && diameter is null && length is null ? null : new PieceGate(count, diameter, length);
    }

    private PiecePrint? Print()
    {
        var baths = cells.Baths();
        var (printedAt, washed, cured) = (cells.Number(FieldLook.PrintedAt), baths.Count > 0 ? baths.Sum() : cells.Number(FieldLook.Washed), cells.Number(FieldLook.Cured));
        return printedAt is null && washed is null && cured is null
            ? null
            : new PiecePrint(
                printedAt is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null,
                washed is { } wash ? Duration.FromMinutes(wash) : null,
                cured is { } cure ? Duration.FromMinutes(cure) : null)
            {
                LongestBath = baths.Count > 0 ? Duration.FromMinutes(baths.Max()) : null,
            };
    }

    private IReadOnlyDictionary<string, int>? PerTree()
    {
        var text = cells.Text(PieceField.PerTree, CellNameWords.PerTree);
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
