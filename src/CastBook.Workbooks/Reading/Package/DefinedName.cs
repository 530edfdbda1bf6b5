namespace CastBook.Workbooks.Reading.Package;

/// <summary>A defined name of the workbook.</summary>
/// <param name="Name">The name.</param>
/// <param name="LocalSheet">Index of the sheet it is local to; null for the whole book.</param>
/// <param name="Hidden">Whether it is hidden.</param>
/// <param name="Text">What it stands for, as a formula writes it.</param>
public sealed record DefinedName(string Name, int? LocalSheet, bool Hidden, string Text)
{
    /// <summary>Reads a name that stands for one cell, such as <c>'Night plan'!$A$1</c>; false for anything else.</summary>
    /// <param name="cell">The cell.</param>
    public bool TryCell(out CellRef cell)
    {
        cell = default;
        var bang = Text.LastIndexOf('!');
        if (bang <= 0 || !CellRef.TryParse(Text.AsSpan(bang + 1), out var row, out var column))
        {
            return false;
        }

        var sheet = Text[..bang].TrimStart('=');
        if (sheet.Length > 1 && sheet[0] == '\'' && sheet[^1] == '\'')
        {
            sheet = sheet[1..^1].Replace("''", "'", StringComparison.Ordinal);
        }

        cell = new CellRef(sheet, row, column);
        return true;
    }
}
