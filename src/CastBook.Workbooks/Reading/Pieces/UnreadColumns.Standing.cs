using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <content>Columns that may say which rows are done or not to be cast.</content>
internal sealed partial class UnreadColumns
{
    // How far rows are is said in few words; a column with more is one of names or remarks.
    private const int MostStandings = 30;

    private const string HeadingOfAnyStanding = "Status";
    private const string HeadingOfDone = "Done";
    private const string HeadingOfLeftOut = "Leave out";

    /// <summary>What is to be said of columns that say of some rows, and not of all, that they are done or not to be cast.</summary>
    /// <param name="rows">The rows that are asked for.</param>
    public IEnumerable<Finding> MayBeStandings(IReadOnlyList<int> rows)
    {
        foreach (var (column, heading) in columns)
        {
            if (remarks?.Column != column && counted != column && Standings(column, heading, rows) is { Count: > 0 } said)
            {
                var named = said.Select(s => CellNameWords.QuotedInRows(s.Key, s.Value.Count, RowNumbers.Text(s.Value)));
                yield return Catalogue.StandingNotRead.At(
                    Subject.Column(PieceField.Piece), CellRef.ColumnName(column), heading, string.Join("; ", named), HeadingFor(heading));
            }
        }
    }

    // A heading that is such a word itself stands over crosses.
    private static string HeadingFor(string heading) =>
        CellWords.Done.Contains(heading) ? HeadingOfDone : CellWords.LeftOut.Contains(heading) ? HeadingOfLeftOut : HeadingOfAnyStanding;

    private SortedDictionary<string, List<int>>? Standings(int column, string heading, IReadOnlyList<int> rows)
    {
        var isHeaded = HeadingFor(heading) != HeadingOfAnyStanding;
        var said = new SortedDictionary<string, List<int>>(StringComparer.OrdinalIgnoreCase);
        var others = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var told = 0;
        foreach (var row in rows)
        {
            var cell = grid.Cell(row, column);
            if (CellValues.IsBlank(cell))
            {
                continue;
            }

            var text = values.Shown(cell);
            var isMark = isHeaded && CellValues.YesOrNo(cell) is not null;
            if ((cell.Kind != CellKind.Text && !isMark) || others.Count > MostStandings)
            {
                return null;
            }

            if (isMark ? CellValues.YesOrNo(cell) == true : CellWords.Done.Contains(text) || CellWords.LeftOut.Contains(text))
            {
                (said.TryGetValue(text, out var known) ? known : said[text] = []).Add(row);
                told++;
            }
            else
            {
                others.Add(text);
            }
        }

        return told < rows.Count ? said : null;
    }
}
