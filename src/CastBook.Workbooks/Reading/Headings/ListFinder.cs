using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Reading.Headings;

/// <summary>Where the list of pieces stands.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Row">The heading row.</param>
/// <param name="Headings">Its headings.</param>
/// <param name="Match">Which column is which.</param>
internal sealed record FoundList(SheetPart Sheet, int Row, IReadOnlyList<(int Column, Heading Heading)> Headings, HeadingMatch Match);

/// <summary>Finds the list of pieces: the sheet and the row with the most headings of one.</summary>
internal sealed class ListFinder(BookPackage package, SharedStrings strings, BookSettings settings, OwnMarks marks)
{
    private const string UsualSheet = "Pieces";

    private (string Sheet, int Row, int Count, string Texts)? nearest;

    /// <summary>Finds the list; a book without one is refused.</summary>
    /// <param name="candidates">The sheets to look at.</param>
    public FoundList Find(IReadOnlyList<SheetPart> candidates)
    {
        var visible = candidates.Where(s => !s.IsHidden).ToList();
        var best = Best(visible) ?? Best(candidates.Where(s => s.IsHidden));
        return best ?? throw NotFound(visible.Count == 0 ? candidates : visible);
    }

    private FoundList? Best(IEnumerable<SheetPart> sheets)
    {
        FoundList? best = null;
        var bestScore = 0;
        foreach (var sheet in sheets)
        {
            var grid = SheetReader.Read(package, sheet, strings, HeadingRow.Last);
            var own = marks.ColumnsOn(sheet).Values.ToHashSet();
            foreach (var row in grid.Rows)
            {
                var headings = HeadingRow.Read(grid, row).Where(h => !own.Contains(h.Column)).ToList();
                if (headings.Count < 2)
                {
                    continue;
                }

                var match = HeadingMatch.Of(headings, HeadingWords.Piece, settings.Columns);
                var score = Score(match, sheet);
                Remember(sheet, row, match, headings);
                if (score > bestScore)
                {
                    (best, bestScore) = (new FoundList(sheet, row, headings, match), score);
                }
            }
        }

        return best;
    }

    // The name of the sheet settles ties only.
    private static int Score(HeadingMatch match, SheetPart sheet)
    {
        bool Has(string field) => match.Fields.ContainsKey(field) || match.Ties.Any(t => t.Field == field);
        var weighed = Has(PieceField.PatternMass) || Has(PieceField.PatternVolume);
        var isList = (Has(PieceField.Piece) && (weighed || Has(PieceField.Quantity))) || (Has(PieceField.Quantity) && weighed);
        var usual = string.Equals(sheet.Name, UsualSheet, StringComparison.OrdinalIgnoreCase) ? 1 : 0;
        return isList ? (2 * (match.Fields.Count + match.Ties.Count)) + usual : 0;
    }

    private void Remember(SheetPart sheet, int row, HeadingMatch match, List<(int Column, Heading Heading)> headings)
    {
        if (nearest is null || match.Fields.Count > nearest.Value.Count)
        {
            var texts = string.Join(", ", headings.Take(6).Select(h => h.Heading.Text));
            nearest = (sheet.Name, row, match.Fields.Count, texts);
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
