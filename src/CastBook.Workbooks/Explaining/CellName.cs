using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Explaining;

/// <summary>A cell as a person names it: <c>Pieces!O2</c>, <c>'Night plan'!E5</c>, <c>Night plan!E5</c>, or <c>O2</c> of the list.</summary>
internal static class CellName
{
    /// <summary>Reads it.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="sheets">The sheets of the filled book, that of the list first.</param>
    /// <returns>The cell, or what is wrong with the name.</returns>
    public static (CellRef Cell, string? Mistake) Read(string text, IReadOnlyList<string> sheets)
    {
        var at = text.LastIndexOf('!');
        var (sheet, address) = (at < 0 ? sheets[0] : Unquoted(text[..at].Trim()), text[(at + 1)..].Trim());
        if (address.Contains(':', StringComparison.Ordinal))
        {
            return (default, ExplanationWords.SeveralCells(text));
        }

        if (!CellRef.TryParse(address, out var row, out var column))
        {
            return (default, ExplanationWords.NoCell(text, sheets[0]));
        }

        return sheets.FirstOrDefault(s => s.Equals(sheet, StringComparison.OrdinalIgnoreCase)) is { } known
            ? (new CellRef(known, row, column), null)
            : (default, ExplanationWords.NoSheet(sheet, $"{Nearest.To(sheet, sheets)}!{address}", sheets));
    }

    private static string Unquoted(string sheet) => sheet.Length > 1 && sheet[0] == '\'' && sheet[^1] == '\''
        ? sheet[1..^1].Replace("''", "'", StringComparison.Ordinal)
        : sheet;
}
