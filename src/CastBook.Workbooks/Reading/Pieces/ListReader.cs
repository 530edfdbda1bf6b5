using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>A list's place among those of the book.</summary>
/// <param name="Number">The number by which the names of its columns are told from theirs.</param>
/// <param name="FirstId">The id of its first piece.</param>
internal readonly record struct ListPlace(int Number, int FirstId);

/// <summary>A list as read.</summary>
/// <param name="Sheet">Where it stands.</param>
/// <param name="Pieces">Its pieces.</param>
/// <param name="WeightsAreOf">What its heading says the weights are of.</param>
/// <param name="Unread">Columns of fields that stand in the list but could not be read.</param>
/// <param name="Findings">What was found.</param>
internal sealed record ListReading(
    PieceSheet Sheet, IReadOnlyList<Piece> Pieces, WeightMeaning WeightsAreOf, IReadOnlyDictionary<string, int> Unread, IReadOnlyList<Finding> Findings)
{
    /// <summary>The columns of its fields.</summary>
    public required IReadOnlyCollection<FieldColumn> Fields { get; init; }

    /// <summary>What its columns of days settle about the order of day and month.</summary>
    public DayOrders Days { get; init; }

    /// <summary>What one of the unit in which all weights stand is in grams; missing where they stand in several, or none does.</summary>
    public double? GramsOfWeightUnit { get; init; }

    /// <summary>Whether its heading says that the gates are in the weights.</summary>
    public bool WeightsHaveGates { get; init; }
}

/// <summary>Reads lists that were found.</summary>
/// <param name="package">The book.</param>
/// <param name="strings">Its shared texts.</param>
/// <param name="formats">Its formats.</param>
/// <param name="values">How its cells are read.</param>
/// <param name="marks">What is ours in it.</param>
/// <param name="words">The shop's own words for headings.</param>
/// <param name="shop">The shop: its alloys, by which a section line that names one is known, and its quantity and alloy where the list gives none.</param>
internal sealed class ListReader(
    BookPackage package, SharedStrings strings, NumberFormats formats, CellValues values, OwnMarks marks,
    IReadOnlyDictionary<string, IReadOnlyList<string>> words, Shop shop)
{
    /// <summary>Reads a list; null where it has headings and no rows.</summary>
    /// <param name="list">Where the list stands.</param>
    /// <param name="place">Its place among the lists of the book.</param>
    /// <param name="elsewhere">What other lists settle about the order of day and month.</param>
    public ListReading? Read(FoundList list, ListPlace place, DayOrders elsewhere = DayOrders.None)
    {
        var grid = SheetReader.Read(package, list.Sheet, strings);
        var table = TableReader.At(package, list.Sheet, grid, list.Headings.Row, list.Headings.FirstColumn);
        var headings = list.Headings.Again(grid, [.. marks.ColumnsOn(list.Sheet).Values], words, table?.Range);
        if (UnitRow.Read(grid, headings.Row + 1, headings.Match.Fields.Values.Select(f => f.Column)) is { } units)
        {
            headings.Match.TakeUnits(units, HeadingWords.PieceIndex);
        }

        var (fields, unreadHeadings, headingFindings) = AlloyUnderMaterial.Settle(
            grid, MaterialNames.Settle(grid, HeadingFindings.Of(headings), headings), headings.Bottom, shop.Alloys);
        var rows = ListRows.Sort(grid, formats, fields, unreadHeadings, headings, words, table);
        if (rows.Pieces.Count == 0)
        {
            return null;
        }

        var sheet = Place(grid, list.Sheet, headings, fields, table, rows, place);
        var (unread, findings) = (new Dictionary<string, int>(unreadHeadings), new List<Finding>(headingFindings));
        var sections = AlloySections.Of(rows, grid, fields, shop.Alloys);
        var (usualQuantity, usualAlloy) = (QuantityOfRows(sheet, unread, findings), sections.Rows.Any() ? null : AlloyOfRows(sheet, unread, findings));
        var cells = new PieceCells(grid, values, fields, rows.Pieces, [.. unread.Keys], elsewhere | formats.Days);
        var reader = new PieceReader(cells, sheet, MaterialOfWeights(fields), usualQuantity, UnreadColumns.Of(sheet, values, unread));
        var pieces = new Piece[rows.Pieces.Count];
        for (var at = 0; at < pieces.Length; at++)
        {
            pieces[at] = reader.Read(rows.Pieces[at], place.FirstId + at, sections.AlloyOf(at) ?? usualAlloy);
        }

        List<int> asked = [.. pieces.Where(p => p is { Done: false, LeaveOut: false }).Select(p => sheet.RowOf(p.Id))];
        findings.AddRange([.. reader.Others.MayBeStandings(asked), .. reader.Names.Findings(sheet.RowOf)]);
        if (!headings.Has(PieceField.Night) && reader.Others.MayBeNights(asked) is { } nights)
        {
            unread[PieceField.Night] = nights.Column;
            findings.Add(nights.Finding);
        }
        else if (!headings.Has(PieceField.Night) && SectionNights.Ask(rows, at => pieces[at] is { Done: false, LeaveOut: false }) is { } sectioned)
        {
            findings.Add(sectioned);
        }

        if (!headings.Has(PieceField.Piece) && reader.Others.MayBeNames(rows.Pieces) is { } names)
        {
            unread[PieceField.Piece] = names.Column;
            findings.Add(names.Finding);
        }

        if (PersonNames.Ask(grid, fields, headings, rows.Pieces) is { } whose)
        {
            findings.Add(whose);
        }

        // All that is asked of the cells from here on are the headings and our own columns.
        grid.KeepOnly(headings.Row, sheet.OwnColumns.Values.ToHashSet());
        findings.AddRange([.. cells.Findings, .. sections.Findings(), .. RowFindings(rows, sections, grid, headings.Row)]);
        var weightsAreOf = fields.GetValueOrDefault(PieceField.PatternMass)?.Word.Meaning ?? WeightMeaning.Unknown;
        return new ListReading(sheet, pieces, weightsAreOf, unread, findings.ConvertAll(f => OnItsSheet(f, sheet)))
        {
            Fields = [.. fields.Values],
            Days = cells.Days,
            GramsOfWeightUnit = cells.GramsOfWeightUnit,
            WeightsHaveGates = fields.GetValueOrDefault(PieceField.PatternMass)?.Word.WithGates == true,
        };
    }

    private static string? MaterialOfWeights(IReadOnlyDictionary<string, FieldColumn> fields) =>
        (fields.GetValueOrDefault(PieceField.PatternMass) ?? fields.GetValueOrDefault(PieceField.PatternVolume))?.Word.Material;

    /// <summary>The quantity of every row of a list without a column for it; it is asked for once, not row by row.</summary>
    private int? QuantityOfRows(PieceSheet sheet, Dictionary<string, int> unread, List<Finding> findings)
    {
        if (sheet.Columns.ContainsKey(PieceField.Quantity) || unread.ContainsKey(PieceField.Quantity))
        {
            return null;
        }

        var (setting, row) = (Subject.Setting(SettingName.QuantityWhereNone), sheet.HeadingRow.ToString(CultureInfo.InvariantCulture));
        if (shop.Settings.QuantityWhereNone is { } usual)
        {
            findings.Add(Catalogue.QuantityFromShop.At(setting, sheet.Sheet.Name, usual.ToString(CultureInfo.InvariantCulture), row));
            return usual;
        }

        unread[PieceField.Quantity] = sheet.Columns.GetValueOrDefault(PieceField.Piece, sheet.FirstColumn);
        findings.Add(Catalogue.QuantityColumnMissing.At([Subject.Column(PieceField.Quantity), setting], sheet.Sheet.Name, row));
        return null;
    }

    /// <summary>The alloy of every row of a list without a column for it, whose section lines name none either; it is asked for once, not row by row.</summary>
    private string? AlloyOfRows(PieceSheet sheet, Dictionary<string, int> unread, List<Finding> findings)
    {
        if (sheet.Columns.ContainsKey(PieceField.Alloy) || unread.ContainsKey(PieceField.Alloy))
        {
            return null;
        }

        var (setting, row) = (Subject.Setting(SettingName.AlloyWhereNone), sheet.HeadingRow.ToString(CultureInfo.InvariantCulture));
        if (shop.Settings.AlloyWhereNone is { } usual)
        {
            findings.Add(Catalogue.AlloyFromShop.At(setting, sheet.Sheet.Name, usual, row));
            return usual;
        }

        unread[PieceField.Alloy] = sheet.Columns.GetValueOrDefault(PieceField.Piece, sheet.FirstColumn);
        findings.Add(Catalogue.AlloyColumnMissing.At([Subject.Column(PieceField.Alloy), setting], sheet.Sheet.Name, row));
        return null;
    }

    private PieceSheet Place(
        SheetGrid grid, SheetPart part, ListHeadings headings, IReadOnlyDictionary<string, FieldColumn> fields, SheetTable? table, ListRows rows, ListPlace place)
    {
        var (own, deleted) = (marks.ColumnsOn(part), marks.DeletedColumns(place.Number));
        var lastField = fields.Values.Max(f => f.Column);
        if (own.Count == 0 && deleted.Count == 0)
        {
            own = OwnHeadings.Find(HeadingRow.Read(grid, headings.Row), lastField);
        }

        var (first, last) = table is null
            ? ListExtent.AroundHeadings(headings.Columns, fields.Values.Min(f => f.Column), Math.Max(lastField, own.Values.DefaultIfEmpty(0).Max()))
            : (table.Range.FirstColumn, Math.Max(table.Range.LastColumn, own.Values.DefaultIfEmpty(0).Max()));
        var lastRow = table is null ? rows.Pieces[^1] : table.Range.LastRow - (table.HasTotalsRow ? 1 : 0);
        return new PieceSheet
        {
            Sheet = part,
            Grid = grid,
            HeadingRow = headings.Row,
            Number = place.Number,
            FirstId = place.FirstId,
            Rows = rows.Pieces,
            Columns = fields.ToDictionary(f => f.Key, f => f.Value.Column, StringComparer.Ordinal),
            OwnColumns = own,
            DeletedOwnColumns = deleted,
            FirstColumn = first,
            LastColumn = last,
            LastRow = lastRow,
            Table = table,
            OccupiedFrom = ListExtent.OccupiedFrom(grid, headings.Row, lastRow, last),
            AutoFilter = grid.AutoFilter,
        };
    }

    /// <summary>Readers of cells know no sheet; with several lists a column is told by its sheet too.</summary>
    private static Finding OnItsSheet(Finding finding, PieceSheet sheet) => finding with
    {
        Subjects = [.. finding.Subjects.Select(s => s.Kind == SubjectKind.Column ? sheet.Column(s.Key) : s)],
    };

    private static IEnumerable<Finding> RowFindings(ListRows rows, AlloySections sections, SheetGrid grid, int headingRow)
    {
        Finding About(FindingKind kind, IReadOnlyList<int> which) => kind.At(Subject.Column(PieceField.Piece), CellNameWords.TheseRows(which.Count, RowNumbers.Text(which)));
        if (rows.Differing is { } differing)
        {
            yield return Catalogue.HeadingsDiffer.At(
                Subject.Column(PieceField.Piece), RowNumbers.Text([differing.Row]), RowNumbers.Text([headingRow]), CellRef.ColumnName(differing.Column),
                CellNameWords.Quoted(differing.Text), CellNameWords.Quoted(differing.Above));
        }

        var hidden = rows.Pieces.Where(grid.IsRowHidden).ToList();
        if (rows.Outside.Count > 0)
        {
            yield return About(Catalogue.RowsOutsideList, rows.Outside);
        }

        if (rows.Unclear.Count > 0)
        {
            yield return About(Catalogue.RowsWithoutPiece, rows.Unclear);
        }

        if (rows.Sections.Except(sections.Rows).ToList() is { Count: > 0 } others)
        {
            yield return About(Catalogue.RowsSections, others);
        }

        if (rows.Sums.Count > 0)
        {
            yield return About(Catalogue.RowsReadAsSums, rows.Sums);
        }

        if (rows.OtherTotals.Count > 0)
        {
            yield return About(Catalogue.RowsReadAsTotals, rows.OtherTotals);
        }

        if (rows.Struck.Count > 0)
        {
            yield return About(Catalogue.RowsStruckOut, rows.Struck);
        }

        if (hidden.Count > 0)
        {
            yield return About(Catalogue.RowsHidden, hidden);
        }
    }
}
