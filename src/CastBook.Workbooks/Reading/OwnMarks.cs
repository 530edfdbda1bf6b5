using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Reading;

/// <summary>What in a book bears our hidden names.</summary>
internal sealed class OwnMarks
{
    private const string SheetEnding = "Sheet";

    private readonly List<(string Name, int List, SheetPart Sheet, int Column)> columns = [];
    private readonly List<(string Name, SheetPart Sheet, int Column)> copied = [];
    private readonly List<(string Name, int List)> deleted = [];
    private readonly Dictionary<string, SheetPart> sheets = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SheetPart> questions = new(StringComparer.Ordinal);

    /// <summary>The sheets of ours, by their name.</summary>
    public IReadOnlyDictionary<string, SheetPart> Sheets => sheets;

    /// <summary>The sheets we added to ask questions, by their name; the shop's own once answered.</summary>
    public IReadOnlyDictionary<string, SheetPart> Questions => questions;

    /// <summary>The hidden names of our columns that stand in the book, on whatever sheet.</summary>
    public IEnumerable<string> ColumnNames => columns.Select(c => OwnName.InList(c.Name, c.List));

    public static OwnMarks Of(BookPackage package)
    {
        var marks = new OwnMarks();
        foreach (var name in package.DefinedNames.Where(n => n.Name.StartsWith(OwnName.Prefix, StringComparison.Ordinal)))
        {
            marks.Take(name, package);
        }

        return marks;
    }

    /// <summary>Whether a name of ours is that of a sheet, not of a column.</summary>
    public static bool IsSheet(string name) => name.EndsWith(SheetEnding, StringComparison.Ordinal) || OwnName.IsQuestions(name);

    /// <summary>Our columns on a sheet; on a copy that an office program made of one, they bear names of that sheet alone.</summary>
    public Dictionary<string, int> ColumnsOn(SheetPart sheet)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (name, _, _, column) in columns.Where(c => c.Sheet == sheet))
        {
            found.TryAdd(name, column);
        }

        foreach (var (name, _, column) in copied.Where(c => c.Sheet == sheet))
        {
            found.TryAdd(name, column);
        }

        return found;
    }

    /// <summary>Columns of a list that the shop has deleted.</summary>
    /// <param name="list">The list's number.</param>
    public HashSet<string> DeletedColumns(int list) => [.. deleted.Where(d => d.List == list).Select(d => d.Name)];

    /// <summary>The numbers by which the names of several lists' columns are told apart: the one that a list bears already, else a free one.</summary>
    /// <param name="lists">The sheets of the lists.</param>
    public IReadOnlyList<int> NumbersFor(IReadOnlyList<SheetPart> lists)
    {
        var taken = columns.Select(c => c.List).ToHashSet();
        if (lists.Count > 1)
        {
            // Whose columns were deleted, nobody can tell among several: a new list must not take that for its own past.
            taken.UnionWith(deleted.Select(d => d.List));
        }

        var numbers = new List<int>();
        foreach (var sheet in lists)
        {
            var number = columns.Where(c => c.Sheet == sheet).Select(c => c.List).Except(numbers).DefaultIfEmpty().Min();
            for (var free = 1; number == 0; free++)
            {
                number = taken.Add(free) ? free : 0;
            }

            numbers.Add(number);
        }

        return numbers;
    }

    private void Take(DefinedName name, BookPackage package)
    {
        var isSheet = IsSheet(name.Name);
        var (own, list) = OwnName.Split(name.Name);
        var sheet = name.TryCell(out var cell)
            ? package.Sheets.FirstOrDefault(s => string.Equals(s.Name, cell.Sheet, StringComparison.OrdinalIgnoreCase))
            : null;
        if (name.LocalSheet is not null)
        {
            if (!isSheet && sheet is not null)
            {
                copied.Add((own, sheet, cell.Column));
            }
        }
        else if (isSheet)
        {
            if (sheet is not null)
            {
                (OwnName.IsQuestions(name.Name) ? questions : sheets)[name.Name] = sheet;
            }
        }
        else if (sheet is not null)
        {
            columns.Add((own, list, sheet, cell.Column));
        }
        else if (name.Text.Contains("#REF!", StringComparison.Ordinal))
        {
            deleted.Add((own, list));
        }
    }
}
