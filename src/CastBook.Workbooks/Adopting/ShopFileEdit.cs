using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Adopting;

/// <summary>Writes answers into a shop file that stands there: into the cells they belong in, and what is new below the last line.</summary>
internal sealed class ShopFileEdit
{
    private readonly BookPackage package;
    private readonly BookEdits edits;
    private readonly SharedStrings strings;
    private readonly CellValues values;
    private readonly List<string> left = [];

    private ShopFileEdit(BookPackage package, BookEdits edits)
    {
        (this.package, this.edits) = (package, edits);
        strings = SharedStrings.Read(package);
        values = new CellValues(NumberFormats.Read(package), package.Date1904);
    }

    /// <summary>Writes the answers.</summary>
    /// <param name="book">The shop file; must be able to seek. It is only read.</param>
    /// <param name="output">Where it goes; must be able to read, write and seek.</param>
    /// <param name="bookName">Its name with its extension.</param>
    /// <param name="answers">The answers.</param>
    /// <returns>Answers for which the file has no place, and whether any part of it differs from before.</returns>
    public static (IReadOnlyList<string> Left, bool Changed) Write(Stream book, Stream output, string bookName, ShopAnswers answers)
    {
        BookGate.Admit(book, bookName);
        using var package = BookPackage.Open(book);
        var edits = new BookEdits(package);
        var edit = new ShopFileEdit(package, edits);
        edit.Settings(answers.Settings);
        foreach (var lines in answers.Lines.GroupBy(l => l.Sheet))
        {
            edit.Lines(ShopSheet.OfShop.First(s => s.Name == lines.Key), [.. lines]);
        }

        var check = new OutputCheck(package, edits);
        PackageWriter.Write(package, edits, output, check.Watch);
        return (edit.left, check.Run(output));
    }

    private void Settings(Dictionary<string, object> settings)
    {
        if (settings.Count == 0)
        {
            return;
        }

        if (Named("Shop") is not { } part
            || !SettingsEdit.Write(part, SheetReader.Read(package, part, strings), values, edits.Sheet(part.PartName), settings, keeps: false))
        {
            left.AddRange(settings.Keys);
        }
    }

    private void Lines(ShopSheet kind, List<ShopLine> lines)
    {
        if (Named(kind.Name) is not { } part || ShopTable.Find(kind, part, SheetReader.Read(package, part, strings), values) is not { } table)
        {
            left.AddRange(lines.Select(l => $"{kind.Name}: {NameOf(l)}"));
            return;
        }

        var (standing, sheet) = (table.NamedRows().ToList(), edits.Sheet(part.PartName));
        var (above, last) = (table.Grid.Rows[^1], table.Grid.Rows[^1]);
        foreach (var line in lines)
        {
            var row = standing.Find(r => ShopLines.IsSame(r.Name, NameOf(line)))?.SheetRow ?? ++last;
            foreach (var (heading, answer) in line.Values)
            {
                if (FieldOf(kind, heading) is { } field && table.Fields.TryGetValue(field, out var column))
                {
                    int? style = row > above && above > table.HeadingsRow ? table.Grid.Cell(above, column.Column).Style : null;
                    sheet.Set(row, column.Column, SettingsEdit.Value(answer, UnitIn(heading), column.Unit), style);
                }
                else
                {
                    left.Add($"{kind.Name}: {heading} of {NameOf(line)}");
                }
            }
        }
    }

    private static string NameOf(ShopLine line) => line.Was ?? (string)line.Values.First().Value;

    private static string? FieldOf(ShopSheet kind, string heading)
    {
        var words = heading.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? heading[..at] : heading;
        return kind.Columns.FirstOrDefault(c => c.Words.Any(w => ShopWords.Key(w.Text) == ShopWords.Key(words)))?.Field;
    }

    private static string UnitIn(string heading) =>
        heading.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? heading[(at + 1)..].TrimEnd(')') : "";

    private SheetPart? Named(string name) => package.Sheets.FirstOrDefault(s => string.Equals(s.Name.Trim(), name, StringComparison.OrdinalIgnoreCase));
}
