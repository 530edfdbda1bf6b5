using System.Globalization;
using CastBook.Planning.Explaining;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Explaining;

/// <summary>An explanation in words for a terminal.</summary>
public static class ExplanationText
{
    /// <summary>What a cell shows, such as <c>8.47 g</c>; empty where it shows nothing.</summary>
    /// <param name="explanation">The explanation.</param>
    public static string Shown(CellExplanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        return explanation.Number is { } number ? WithUnit(number, explanation.Account?.Unit) : explanation.Text;
    }

    /// <summary>The whole explanation, line by line.</summary>
    /// <param name="explanation">The explanation.</param>
    public static IReadOnlyList<string> Lines(CellExplanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        var lines = new List<string> { explanation.About.Length > 0 ? $"{explanation.Cell}  {explanation.About}" : explanation.Cell.ToString() };
        if (explanation.Account is { } account)
        {
            lines.Add(Sum(explanation, account));
            if (account.Numbers.Length > 0)
            {
                lines.Add(ExplanationWords.InWords(account.Words));
            }

            lines.AddRange(explanation.Inputs.Select(i => $"  {i.Name}: {i.Value} · {i.From}"));
            if (account.ValidFor.Length > 0)
            {
                lines.Add(ExplanationWords.HoldsFor(account.ValidFor));
            }
        }

        if (explanation.Note.Length > 0)
        {
            lines.Add(explanation.Note);
        }

        lines.AddRange(explanation.Findings.Select(f => $"  {MarkRules.WordOf(f.Severity)}  {f.Seen} {f.Why} {f.Remedy}"));
        return lines;
    }

    /// <summary>The explanation of a cell that is worked out, in one line.</summary>
    /// <param name="explanation">The explanation.</param>
    public static string Line(CellExplanation explanation)
    {
        ArgumentNullException.ThrowIfNull(explanation);
        var sum = explanation.Account is { } account ? Sum(explanation, account) : explanation.Note;
        return $"{explanation.Cell}  {string.Join(" · ", [sum, .. explanation.Inputs.Select(i => $"{i.Name}: {i.From}")])}";
    }

    // A formula leads to its result; where nothing is reckoned the result comes first and then how it was found.
    private static string Sum(CellExplanation explanation, Account account)
    {
        var shown = Shown(explanation);
        if (account.Numbers.Length == 0)
        {
            return $"{account.Name} = {shown}: {account.Words}";
        }

        var result = explanation.Number is null && account.Result is { } number && WithUnit(number, account.Unit) is var reckoned && reckoned != shown
            ? ExplanationWords.Written(reckoned, Rounded(account), shown)
            : shown + Rounded(account);
        return $"{account.Name} = {account.Numbers} = {result}";
    }

    private static string Rounded(Account account) => account.Rounded.Length > 0 ? $", {account.Rounded}" : "";

    private static string WithUnit(double number, string? unit) =>
        $"{number.ToString("#,##0.###", CultureInfo.InvariantCulture)} {unit}".TrimEnd();
}
