using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Where the list of pieces stands.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Headings">Its headings.</param>
/// <param name="Score">How well they fit.</param>
internal sealed record FoundList(SheetPart Sheet, ListHeadings Headings, int Score)
{
    /// <summary>Names of other sheets that hold a list of pieces too.</summary>
    public List<string> Others { get; } = [];
}

/// <summary>Finds the list of pieces: the sheet and the row with the most headings of one.</summary>
internal sealed class ListFinder(BookPackage package, SharedStrings strings, BookSettings settings, OwnMarks marks)
{
    private const string UsualSheet = "Pieces";

    private (string Sheet, int Row, int Count, string Texts)? nearest;

    /// <summary>Finds the list; a book without one is refused.</summary>
    /// <param name="candidates">The sheets to look at.</param>
    public FoundList Find(IReadOnlyList<SheetPart> candidates)
    {
        if (settings.Sheet is { } wanted)
        {
            candidates = [.. candidates.Where(s => string.Equals(s.Name, wanted, StringComparison.OrdinalIgnoreCase))];
            if (candidates.Count == 0)
            {
                throw BookRefusedException.For(Catalogue.ListSheetMissing, wanted);
            }
        }

        var visible = candidates.Where(s => !s.IsHidden).ToList();
        var best = Best(visible) ?? Best(candidates.Where(s => s.IsHidden));
        return best ?? throw NotFound(visible.Count == 0 ? candidates : visible);
    }

    private FoundList? Best(IEnumerable<SheetPart> sheets)
    {
        var lists = new List<FoundList>();
        foreach (var sheet in sheets)
        {
            if (On(sheet) is { } list)
            {
                lists.Add(list);
            }
        }

        FoundList? best = null;
        foreach (var list in lists)
        {
            best = list.Score > (best?.Score ?? 0) ? list : best;
        }

        foreach (var list in lists)
        {
            if (list != best && list.Headings.Has(PieceField.Piece) && list.Headings.Has(PieceField.Quantity) && IsWeighed(list.Headings))
            {
                best!.Others.Add(list.Sheet.Name);
            }
        }

        return best;
    }

    private FoundList? On(SheetPart sheet)
    {
        var grid = SheetReader.Read(package, sheet, strings, HeadingRow.Last);
        var own = marks.ColumnsOn(sheet).Values.ToHashSet();
        FoundList? best = null;
        var (above, textsAbove) = (0, 0);
        foreach (var row in grid.Rows)
        {
            var texts = CountTexts(grid, row);
            if (texts > 0 && textsAbove > 0 && row == above + 1 && texts + textsAbove >= 3 && HasNoNumber(grid, row))
            {
                best = Better(best, sheet, ListHeadings.Read(grid, above, row, own, settings.Columns));
            }

            if (texts >= 2)
            {
                best = Better(best, sheet, ListHeadings.Read(grid, row, row, own, settings.Columns));
            }

            (above, textsAbove) = (row, texts);
        }

        return best;
    }

    // One row of headings is read as one: two are only better where they say more.
    private FoundList? Better(FoundList? best, SheetPart sheet, ListHeadings headings)
    {
        Remember(sheet, headings);
        var score = Score(headings, sheet);
        var isBetter = score > (best?.Score ?? 0)
            || (score > 0 && score == best!.Score && headings.IsOneRow && !best.Headings.IsOneRow);
        return isBetter ? new FoundList(sheet, headings, score) : best;
    }

    private static int CountTexts(SheetGrid grid, int row)
    {
        var count = 0;
        for (var column = grid.LastColumnOf(row); column > 0; column--)
        {
            count += HeadingRow.TextAt(grid, row, column) is null ? 0 : 1;
        }

        return count;
    }

    private static bool HasNoNumber(SheetGrid grid, int row)
    {
        for (var column = grid.LastColumnOf(row); column > 0; column--)
        {
            if (grid.Cell(row, column).Kind is CellKind.Number or CellKind.Date)
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsWeighed(ListHeadings headings) => headings.Has(PieceField.PatternMass) || headings.Has(PieceField.PatternVolume);

    // The usual name of the sheet settles ties only.
    private static int Score(ListHeadings headings, SheetPart sheet)
    {
        var isList = (headings.Has(PieceField.Piece) && (IsWeighed(headings) || headings.Has(PieceField.Quantity)))
            || (headings.Has(PieceField.Quantity) && IsWeighed(headings));
        var usual = string.Equals(sheet.Name, UsualSheet, StringComparison.OrdinalIgnoreCase) ? 1 : 0;
        return isList ? (2 * headings.Worth) + usual : 0;
    }

    private void Remember(SheetPart sheet, ListHeadings headings)
    {
        if (nearest is null || headings.Match.Fields.Count > nearest.Value.Count)
        {
            var texts = string.Join(", ", headings.Texts.Take(6).Select(h => h.Heading.Text));
            nearest = (sheet.Name, headings.Row, headings.Match.Fields.Count, texts);
        }
    }

    private BookRefusedException NotFound(IReadOnlyList<SheetPart> sheets)
    {
        if (sheets.Count == 0)
        {
            return BookRefusedException.For(Catalogue.ListNoSheet);
        }

        return nearest is { } row
            ? BookRefusedException.For(Catalogue.ListNotFoundNear, $"row {row.Row} of sheet {row.Sheet}", row.Texts)
            : BookRefusedException.For(Catalogue.ListNotFound, string.Join(", ", sheets.Take(4).Select(s => s.Name)));
    }
}
