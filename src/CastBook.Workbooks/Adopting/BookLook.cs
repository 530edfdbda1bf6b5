using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Adopting;

/// <summary>A first look at a shop's own book: where its list stands, which of its columns are known, and what is known of the shop.</summary>
/// <param name="Sheet">The sheet with the list.</param>
/// <param name="HeadingRow">The row of its headings.</param>
/// <param name="Columns">The columns, from left to right.</param>
/// <param name="Shop">What the book and the files around it say of the shop; missing where the list is not known well enough to be read.</param>
/// <param name="SaysWhatIsWeighed">Whether the list or the shop says what the weights weigh.</param>
/// <param name="SettingsSaid">The settings that somebody has answered, by name.</param>
/// <param name="Refusal">Why the list cannot be filled as it is; missing where it can.</param>
public sealed record BookLook(
    string Sheet, int HeadingRow, IReadOnlyList<SeenColumn> Columns, Shop? Shop, bool SaysWhatIsWeighed, IReadOnlySet<string> SettingsSaid, string? Refusal)
{
    /// <summary>The columns that a list cannot do without, and that this one lacks.</summary>
    public IReadOnlyList<string> Missing
    {
        get
        {
            List<string> missing = [.. new[] { PieceField.Piece, PieceField.Quantity, PieceField.PatternMass, PieceField.Alloy }.Where(f => !Has(f))];
            if (Has(PieceField.PatternVolume))
            {
                missing.Remove(PieceField.PatternMass);
            }

            return missing;
        }
    }

    /// <summary>Looks at a book; it is only read.</summary>
    /// <param name="path">The workbook.</param>
    /// <param name="settings">What <c>castbook.json</c> and the environment say.</param>
    /// <exception cref="BookRefusedException">The workbook cannot be read, or no row in it looks like headings.</exception>
    public static BookLook At(string path, BookSettings settings)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(settings);
        try
        {
            using var book = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            try
            {
                return Known(BookReader.Read(book, settings, Path.GetFileName(path)));
            }
            catch (BookRefusedException e) when (e.Finding.Kind == Catalogue.ListNotFoundNear)
            {
                book.Position = 0;
                return Unknown(book, settings, e);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookRefusedException(Catalogue.BookCannotBeOpened.At(Subject.Book, Path.GetFileName(path), e.Message), e);
        }
    }

    private bool Has(string field) => Columns.Any(c => c.Field == field);

    private static BookLook Known(BookReading reading)
    {
        using var package = reading.Package;
        var list = reading.Lists[0];
        var fields = list.Columns.ToDictionary(c => c.Value, c => c.Key);
        return new BookLook(
            list.Sheet.Name,
            list.HeadingRow,
            Seen(list.Grid, list.HeadingRow, fields, [.. list.OwnColumns.Values]),
            reading.Night.Shop,
            reading.Night.WeightsAreOf != WeightMeaning.Unknown || !list.Columns.ContainsKey(PieceField.PatternMass),
            reading.Origins.Keys.ToHashSet(StringComparer.OrdinalIgnoreCase),
            Refusal: null);
    }

    /// <summary>The row with the most headings that are known, else the first with the most texts.</summary>
    private static BookLook Unknown(FileStream book, BookSettings settings, BookRefusedException refusal)
    {
        using var package = BookPackage.Open(book, settings.Caps);
        var (strings, marks) = (SharedStrings.Read(package), OwnMarks.Of(package));
        (int Worth, BookLook Look)? best = null;
        foreach (var sheet in package.Sheets.Where(s => !s.IsHidden && !marks.Sheets.Values.Contains(s)))
        {
            var grid = SheetReader.Read(package, sheet, strings, Reading.Headings.HeadingRow.Last);
            foreach (var row in grid.Rows)
            {
                var headings = ListHeadings.Read(grid, row, row, [], settings.Columns);
                var worth = (100 * headings.Match.Fields.Count) + headings.Texts.Count;
                if (headings.Texts.Count >= 2 && worth > (best?.Worth ?? 0))
                {
                    var columns = Seen(grid, row, headings.Match.Fields.ToDictionary(f => f.Value.Column, f => f.Key), []);
                    best = (worth, new BookLook(sheet.Name, row, columns, null, false, new HashSet<string>(), refusal.Message));
                }
            }
        }

        return best?.Look ?? throw refusal;
    }

    private static List<SeenColumn> Seen(SheetGrid grid, int row, Dictionary<int, string> fields, HashSet<int> own)
    {
        var seen = new List<SeenColumn>();
        for (var column = 1; column <= grid.LastColumnOf(row); column++)
        {
            if (own.Contains(column) || Reading.Headings.HeadingRow.TextAt(grid, row, column) is not { } text)
            {
                continue;
            }

            var field = fields.GetValueOrDefault(column);
            seen.Add(new SeenColumn(CellRef.ColumnName(column), text.Trim(), field, field is null ? Near(text, fields) : null));
        }

        return seen;
    }

    private static string WithoutUnit(string heading) => heading.IndexOfAny(['(', '[', '\n']) is > 0 and var at ? heading[..at] : heading;

    private static string? Near(string heading, Dictionary<int, string> taken) => HeadingWords.Piece
        .Where(f => !taken.ContainsValue(f.Field))
        .FirstOrDefault(f => Nearest.Close(WithoutUnit(heading), f.Words.Select(w => w.Text)) is not null)?.Field;
}
