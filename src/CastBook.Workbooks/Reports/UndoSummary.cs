using CastBook.Workbooks.Undoing;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Reports;

/// <summary>What was taken out of a book, in a few lines for a terminal.</summary>
public static class UndoSummary
{
    /// <summary>The lines.</summary>
    /// <param name="bookName">The book's file name.</param>
    /// <param name="result">What was taken out.</param>
    public static IReadOnlyList<string> Lines(string bookName, UndoResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var first = result switch
        {
            { IsExact: true } => SummaryWords.AsBefore,
            { Taken.Count: > 0 } => SummaryWords.TakenOut(result.Taken),
            { Changed: true } => SummaryWords.NamesTakenOut,
            _ => SummaryWords.LeftAsItIs,
        };
        return
        [
            $"{bookName}: {first}",
            .. result.Findings.Select(f => string.Join(' ', new[] { $"{MarkRules.WordOf(f.Severity)} ", f.Seen, f.Why, f.Remedy }.Where(t => t.Length > 0))),
        ];
    }
}
