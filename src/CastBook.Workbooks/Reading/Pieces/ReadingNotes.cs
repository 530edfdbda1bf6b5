using System.Numerics;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>What was taken for granted and what could not be settled, column by column or word by word: one finding for each, with the rows it is about.</summary>
internal sealed class ReadingNotes
{
    private readonly Dictionary<(string Field, NumberAssumptions Assumed), Example> assumptions = [];
    private readonly Dictionary<string, Example> days = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Heading, Subject First, int Rows)> shapes = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(string Field, string Kind), (FindingKind Kind, string[] Words, List<Subject> Subjects)> open = [];

    /// <summary>Notes what was taken for granted with a number.</summary>
    /// <param name="field">The field.</param>
    /// <param name="heading">Its heading.</param>
    /// <param name="row">The row on the sheet.</param>
    /// <param name="assumed">What was taken for granted.</param>
    /// <param name="typed">The cell as typed.</param>
    /// <param name="number">The number as it was typed.</param>
    /// <param name="value">What it was read as, in words.</param>
    public void Take(string field, string heading, int row, NumberAssumptions assumed, string typed, string number, string value)
    {
        for (var rest = (int)assumed; rest != 0; rest &= rest - 1)
        {
            var one = (NumberAssumptions)(1 << BitOperations.TrailingZeroCount(rest));
            if (!assumptions.TryGetValue((field, one), out var example))
            {
                var isSign = one is NumberAssumptions.DecimalComma or NumberAssumptions.Thousands;
                assumptions[(field, one)] = example = new Example(heading, typed, isSign ? number : value, []);
            }

            example.Rows.Add(row);
        }
    }

    /// <summary>Notes a day that was read in the order its column settles.</summary>
    public void TakeDay(string field, string heading, int row, string typed, string day)
    {
        if (!days.TryGetValue(field, out var example))
        {
            days[field] = example = new Example(heading, typed, day, []);
        }

        example.Rows.Add(row);
    }

    /// <summary>Notes a shape that nobody can read; it is told at the first row that has it.</summary>
    public void TakeShape(string typed, string heading, Subject subject) =>
        shapes[typed] = shapes.TryGetValue(typed, out var seen) ? seen with { Rows = seen.Rows + 1 } : (heading, subject, 1);

    /// <summary>Notes a cell that nothing in its column settles; all of them are asked about at once, in the words of the first.</summary>
    public void Ask(string field, FindingKind kind, Subject subject, params string[] words)
    {
        if (!open.TryGetValue((field, kind.Id), out var asked))
        {
            open[(field, kind.Id)] = asked = (kind, words, []);
        }

        asked.Subjects.Add(subject);
    }

    /// <summary>The findings.</summary>
    public IEnumerable<Finding> Findings() =>
    [
        .. open.Values.Select(o => o.Kind.At(o.Subjects, o.Words)),
        .. assumptions.Select(a => a.Value.At(KindOf(a.Key.Assumed), a.Key.Field)),
        .. days.Select(d => d.Value.At(Catalogue.DayOrder, d.Key)),
        .. shapes.Select(s => Catalogue.ShapeNotKnown.At(s.Value.First, s.Key, s.Value.Heading, CellNameWords.Rows(s.Value.Rows))),
    ];

    private static FindingKind KindOf(NumberAssumptions assumed) => assumed switch
    {
        NumberAssumptions.DecimalComma => Catalogue.DecimalComma,
        NumberAssumptions.Thousands => Catalogue.ThousandsMark,
        NumberAssumptions.OwnUnit => Catalogue.UnitConverted,
        NumberAssumptions.PlainOunce => Catalogue.UnitPlainOunceInCell,
        NumberAssumptions.Pairs => Catalogue.PairsCounted,
        NumberAssumptions.PlainLiquid => Catalogue.LiquidIsUs,
        _ => Catalogue.DozensCounted,
    };

    private sealed record Example(string Heading, string Typed, string ReadAs, List<int> Rows)
    {
        public Finding At(FindingKind kind, string field) =>
            kind.At(Subject.Column(field), Heading, Typed, ReadAs, (Rows.Count == 1 ? "row " : "rows ") + RowNumbers.Text(Rows));
    }
}
