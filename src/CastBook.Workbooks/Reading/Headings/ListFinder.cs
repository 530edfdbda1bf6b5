using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Where a list of pieces stands.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Headings">Its headings.</param>
/// <param name="Score">How well they fit.</param>
internal sealed record FoundList(SheetPart Sheet, ListHeadings Headings, int Score)
{
    /// <summary>Whether it has all that a list needs: other tables may have a name and a number too.</summary>
    public bool IsWhole => Headings.Has(PieceField.Piece) && Headings.Has(PieceField.Quantity)
        && (Headings.Has(PieceField.PatternMass) || Headings.Has(PieceField.PatternVolume));
}

/// <summary>Where the lists of pieces stand, each on a sheet of its own.</summary>
/// <param name="Lists">The lists, one at least.</param>
/// <param name="Findings">What is to be said of other sheets.</param>
internal sealed record FoundLists(IReadOnlyList<FoundList> Lists, IReadOnlyList<Finding> Findings);

/// <summary>Finds the list of pieces, the sheet and the row with the most headings of one; or several, where the shop wants them.</summary>
internal sealed class ListFinder(
    BookPackage package, SharedStrings strings, IReadOnlyDictionary<string, IReadOnlyList<string>> words, OwnMarks marks, IReadOnlyCollection<string> shopSheets)
{
    private const string UsualSheet = "Pieces";

    // One or two may stand in any book; as many as these and no list make a shop file.
    private const int SheetsOfAShopFile = 3;

    private (string Sheet, int Row, int Count, string Texts)? nearest;

    /// <summary>Finds the lists; a book without one is refused.</summary>
    /// <param name="candidates">The sheets to look at.</param>
    /// <param name="wanted">The sheets the shop wants filled; null where it leaves that to us.</param>
    public FoundLists Find(IReadOnlyList<SheetPart> candidates, WantedSheets? wanted)
    {
        if (wanted is not null)
        {
            var (sheets, missing) = wanted.Among(candidates);
            return sheets is null ? All(candidates) : Named(sheets, missing, wanted);
        }

        var lists = Visible(candidates);
        var best = Best(lists) ?? throw NotFound(candidates);
        var others = lists.Where(l => l != best && l.IsWhole).Select(l => l.Sheet.Name).ToList();
        return new FoundLists([best], others.Count == 0 ? [] : [OtherLists(best.Sheet.Name, others)]);
    }

    private static Finding OtherLists(string read, List<string> others) => Catalogue.ListsOnOtherSheets.At(
        [Subject.Setting(SettingName.SheetsToFill), Subject.Book], read, string.Join(", ", others), string.Join(", ", others.Prepend(read).Select(n => $"\"{n}\"")));

    private static FoundList? Best(List<FoundList> lists)
    {
        FoundList? best = null;
        foreach (var list in lists)
        {
            best = list.Score > (best?.Score ?? 0) ? list : best;
        }

        return best;
    }

    // Hidden sheets are looked at only where nothing else is to be seen.
    private List<FoundList> Visible(IReadOnlyList<SheetPart> candidates) =>
        candidates.Where(s => !s.IsHidden).Select(On).OfType<FoundList>().ToList() is { Count: > 0 } seen
            ? seen
            : [.. candidates.Where(s => s.IsHidden).Select(On).OfType<FoundList>()];

    private FoundLists All(IReadOnlyList<SheetPart> candidates)
    {
        var lists = Visible(candidates);
        var whole = lists.Where(l => l.IsWhole).ToList();
        return new FoundLists(whole.Count > 0 ? whole : [Best(lists) ?? throw NotFound(candidates)], []);
    }

    private FoundLists Named(IReadOnlyList<SheetPart> sheets, IReadOnlyList<string> missing, WantedSheets wanted)
    {
        if (sheets.Count == 0)
        {
            throw BookRefusedException.For(Catalogue.ListSheetMissing, Say(missing), wanted.SaidIn);
        }

        var found = sheets.Select(s => (Sheet: s, List: On(s))).ToList();
        var without = found.Where(f => f.List is null).Select(f => f.Sheet).ToList();
        if (without.Count == sheets.Count)
        {
            throw NotFound(sheets);
        }

        var findings = missing.Select(name => Catalogue.ListSheetMissingAmongSeveral.At(wanted.Subject, name, wanted.SaidIn))
            .Concat(without.Select(s => Catalogue.ListNotOnSheet.At(wanted.Subject, s.Name, wanted.SaidIn)));
        return new FoundLists([.. found.Select(f => f.List).OfType<FoundList>()], [.. findings]);
    }

    private static string Say(IReadOnlyList<string> names) => string.Join(" or ", names);

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
                best = Better(best, sheet, ListHeadings.Read(grid, above, row, own, words));
            }

            if (texts >= 2)
            {
                best = Better(best, sheet, ListHeadings.Read(grid, row, row, own, words));
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

    // The usual name of the sheet settles ties only.
    private static int Score(ListHeadings headings, SheetPart sheet)
    {
        var isWeighed = headings.Has(PieceField.PatternMass) || headings.Has(PieceField.PatternVolume);
        var isList = (headings.Has(PieceField.Piece) && (isWeighed || headings.Has(PieceField.Quantity)))
            || (headings.Has(PieceField.Quantity) && isWeighed);
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

    private BookRefusedException NotFound(IReadOnlyList<SheetPart> candidates)
    {
        var visible = candidates.Where(s => !s.IsHidden).ToList();
        var sheets = visible.Count == 0 ? candidates : visible;
        if (sheets.Count == 0)
        {
            return BookRefusedException.For(Catalogue.ListNoSheet);
        }

        if (nearest is null && shopSheets.Count >= SheetsOfAShopFile)
        {
            return BookRefusedException.For(Catalogue.ListInNoShopFile, string.Join(", ", shopSheets));
        }

        return nearest is { } row
            ? BookRefusedException.For(Catalogue.ListNotFoundNear, CellNameWords.RowOfSheet(row.Row, row.Sheet), row.Texts)
            : BookRefusedException.For(Catalogue.ListNotFound, string.Join(", ", sheets.Take(4).Select(s => s.Name)));
    }
}
