using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Reports;

/// <summary>Where each piece stands: sheet and row.</summary>
public sealed class PiecePlaces
{
    // Not the lists themselves: their cells would be held on to.
    private readonly (string Sheet, int FirstId, IReadOnlyList<int> Rows)[] lists;

    /// <summary>Notes where the pieces of some lists stand.</summary>
    /// <param name="lists">The lists.</param>
    public PiecePlaces(IEnumerable<PieceSheet> lists) => this.lists = [.. lists.Select(l => (l.Sheet.Name, l.FirstId, l.Rows))];

    /// <summary>The sheet of a piece and its row there.</summary>
    /// <param name="id">The piece's id.</param>
    public (string Sheet, int Row) this[int id]
    {
        get
        {
            var at = Array.FindLastIndex(lists, l => l.FirstId <= id);
            return (lists[at].Sheet, lists[at].Rows[id - lists[at].FirstId]);
        }
    }
}
