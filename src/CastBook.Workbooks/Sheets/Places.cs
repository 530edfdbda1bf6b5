using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Settings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sheets;

/// <summary>Where a finding stands, in words: the cell, and the other rows it speaks of.</summary>
internal static class Places
{
    private const int MostNames = 3;

    /// <summary>Such as <c>Pieces!C14 "Otter ring"</c>, <c>Pieces!C14 and rows 15, 17–20</c>, <c>March!C14 and row 6 of April</c>, or <c>Shop: Weights are of</c>.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="reading">The book.</param>
    public static string Of(Finding finding, BookReading reading)
    {
        var first = finding.Subjects[0];
        var text = new StringBuilder(One(first, reading));
        var sheet = first.Kind == SubjectKind.Piece ? reading.Cells.Find(first)?.Sheet : null;
        foreach (var cells in finding.Subjects.Skip(1).Where(s => s.Kind == SubjectKind.Piece)
            .Select(reading.Cells.Find).OfType<CellRef>().GroupBy(c => c.Sheet))
        {
            var rows = cells.Select(c => c.Row).Distinct().Order().ToList();
            var of = reading.Lists.Count == 1 || cells.Key == sheet ? "" : PlaceWords.OfSheet(cells.Key);
            text.Append(PlaceWords.Rows(rows.Count, Ranges(rows))).Append(of);
        }

        var others = finding.Subjects.Skip(1).Where(s => s.Kind != SubjectKind.Piece).Select(s => One(s, reading)).Distinct().ToList();
        foreach (var other in others.Take(MostNames))
        {
            text.Append(", ").Append(other);
        }

        return others.Count > MostNames ? text.Append(PlaceWords.More(others.Count - MostNames)).ToString() : text.ToString();
    }

    private static string One(Subject subject, BookReading reading)
    {
        var cell = reading.Cells.Find(subject);
        return subject.Kind switch
        {
            SubjectKind.Book => PlaceWords.Book,
            SubjectKind.Piece => cell is { } at ? $"{at}{Name(subject, reading)}" : PlaceWords.Piece,
            SubjectKind.Flask => cell is { } at ? $"{at}, {PlaceWords.Flask(subject.Key)}" : PlaceWords.Flask(subject.Key),
            SubjectKind.Column => cell is { } at ? at.ToString() : PlaceWords.List,
            _ => (reading.Cells.InFile(subject) ?? cell?.ToString()) is { } at ? $"{at} {Called(subject)}".TrimEnd() : $"{SheetOf(subject.Kind)}: {Called(subject)}".TrimEnd(' ', ':'),
        };
    }

    // 'Alloy "silver" is' and row 5: without its marks the end of it would read on.
    private static string Called(Subject subject) => subject.Kind == SubjectKind.Setting && subject.Key.Contains('"', StringComparison.Ordinal) ? $"'{subject.Key}'" : subject.Key;

    /// <summary>The sheet on which a kind of thing is typed; empty for things that are on none.</summary>
    /// <param name="kind">The kind.</param>
    public static string SheetOf(SubjectKind kind) => kind switch
    {
        SubjectKind.Setting => QuestionSheets.ShopName,
        SubjectKind.FlaskSize => ShopSheet.Flasks.Name,
        SubjectKind.Crucible => ShopSheet.Crucibles.Name,
        SubjectKind.Kiln => ShopSheet.Kilns.Name,
        SubjectKind.Alloy => ShopSheet.Alloys.Name,
        SubjectKind.Material => ShopSheet.Materials.Name,
        SubjectKind.Investment => ShopSheet.Investments.Name,
        SubjectKind.Schedule => ShopSheet.Schedules.Name,
        _ => "",
    };

    private static string Name(Subject piece, BookReading reading)
    {
        var name = reading.Night.Pieces[int.Parse(piece.Key, CultureInfo.InvariantCulture)].Name;
        return name.Length == 0 ? "" : $" {name}";
    }

    private static string Ranges(List<int> rows)
    {
        var parts = new List<string>();
        for (var i = 0; i < rows.Count;)
        {
            var last = i;
            while (last + 1 < rows.Count && rows[last + 1] == rows[last] + 1)
            {
                last++;
            }

            parts.Add(last == i
                ? rows[i].ToString(CultureInfo.InvariantCulture)
                : string.Create(CultureInfo.InvariantCulture, $"{rows[i]}–{rows[last]}"));
            i = last + 1;
        }

        return string.Join(", ", parts);
    }
}
