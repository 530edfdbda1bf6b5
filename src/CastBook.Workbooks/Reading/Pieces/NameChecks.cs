using System.Buffers;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Holds the names of pieces against what else their rows say: a ring that is measured as a bar, a pair of which one is cast.</summary>
internal sealed class NameChecks
{
    // Every word for a pair holds one of these; most names hold none, and that is told at once.
    private static readonly SearchValues<string> OfPairs = SearchValues.Create(["pair", "paar", "par", "paio", "paia", "coppi"], StringComparison.OrdinalIgnoreCase);

    // Spanish and Portuguese for a pair, French for "by".
    private const string PairAtTheEnd = "par";

    private const int One = 1;
    private const int Two = 2;

    private readonly List<int> bars = [];
    private readonly List<int> pairs = [];

    /// <summary>Looks at a row that is still to be cast.</summary>
    /// <param name="piece">What was read of it.</param>
    /// <param name="saysShape">Whether it says anything of its shape.</param>
    public void Look(Piece piece, bool saysShape)
    {
        if (!saysShape && piece.Box is { IsRing: false, Thickness: null } && AnswerWords.NamesRing(piece.Name))
        {
            bars.Add(piece.Id);
        }

        if (piece.Quantity == One && NamesPair(piece.Name))
        {
            pairs.Add(piece.Id);
        }
    }

    /// <summary>What was found.</summary>
    /// <param name="rowOf">The row of a piece on the sheet.</param>
    public IEnumerable<Finding> Findings(Func<int, int> rowOf)
    {
        Finding Of(FindingKind kind, List<int> ids, string field) => kind.At(
            [.. ids.Select(id => Subject.Piece(id, field))], CellNameWords.TheseRows(ids.Count, RowNumbers.Text(ids.ConvertAll(id => rowOf(id)))));
        if (bars.Count > 0)
        {
            yield return Of(Catalogue.RingsReadAsBars, bars, PieceField.Length);
        }

        if (pairs.Count > 0)
        {
            yield return Of(Catalogue.NamesOfPairs, pairs, PieceField.Quantity);
        }
    }

    private static bool NamesPair(string name) => name.AsSpan().ContainsAny(OfPairs)
        && WordKey.Parts(name) is var words
        && (words.Exists(w => w != PairAtTheEnd && CountWord.TryParse(w, out var times) && times == Two) || words is [.., _, PairAtTheEnd]);
}
