using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading;

/// <summary>What in a book bears our hidden names.</summary>
internal sealed class OwnMarks
{
    private const string SheetEnding = "Sheet";

    private readonly Dictionary<string, CellRef> columns = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SheetPart> sheets = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SheetPart> questions = new(StringComparer.Ordinal);
    private readonly List<string> deleted = [];

    /// <summary>The sheets of ours, by their name.</summary>
    public IReadOnlyDictionary<string, SheetPart> Sheets => sheets;

    /// <summary>The sheets we added to ask questions, by their name; the shop's own once answered.</summary>
    public IReadOnlyDictionary<string, SheetPart> Questions => questions;

    /// <summary>Our columns whose cells the shop has deleted.</summary>
    public IReadOnlyCollection<string> DeletedColumns => deleted;

    public static OwnMarks Of(BookPackage package)
    {
        var marks = new OwnMarks();
        foreach (var name in package.DefinedNames.Where(n => n.LocalSheet is null && n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal)))
        {
            var isSheet = IsSheet(name.Name);
            if (!name.TryCell(out var cell))
            {
                if (!isSheet && name.Text.Contains("#REF!", StringComparison.Ordinal))
                {
                    marks.deleted.Add(name.Name);
                }
            }
            else if (!isSheet)
            {
                marks.columns[name.Name] = cell;
            }
            else if (package.Sheets.FirstOrDefault(s => IsNamed(s, cell.Sheet)) is { } sheet)
            {
                (OwnName.IsQuestions(name.Name) ? marks.questions : marks.sheets)[name.Name] = sheet;
            }
        }

        return marks;
    }

    /// <summary>Whether a name of ours is that of a sheet, not of a column.</summary>
    public static bool IsSheet(string name) => name.EndsWith(SheetEnding, StringComparison.Ordinal) || OwnName.IsQuestions(name);

    /// <summary>Our columns on a sheet.</summary>
    public Dictionary<string, int> ColumnsOn(SheetPart sheet) =>
        columns.Where(c => IsNamed(sheet, c.Value.Sheet)).ToDictionary(c => c.Key, c => c.Value.Column, StringComparer.Ordinal);

    private static bool IsNamed(SheetPart sheet, string name) => string.Equals(sheet.Name, name, StringComparison.OrdinalIgnoreCase);
}
