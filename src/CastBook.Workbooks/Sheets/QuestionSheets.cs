using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Words;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>
/// The sheets in which a shop answers what is asked and its book has no cell for: Shop and those of <see cref="QuestionForm"/>.
/// Each is added once, holds only what is asked, and is the shop's from then on.
/// </summary>
internal static class QuestionSheets
{
    private const int HeadingRow = 4;
    private const int CharactersOfWhatFor = 78;
    private const int HeightOfLine = 15;

    // An office program repairs a book with a longer list of choices.
    private const int LongestList = 255;

    /// <summary>The sheet of the settings.</summary>
    public const string ShopName = "Shop";


    // Nobody has to say them, but only who does has a night with hours; without a line for them nobody would know.
    private static readonly string[] HoursOfTheNight = [SettingName.StartAt, SettingName.PourAt, SettingName.AtWorkFrom, SettingName.AtWorkUntil, SettingName.HoursOfWork, SettingName.ClosedOn];

    private static readonly QuestionColumn[] ShopColumns = [new("Setting", "", 30), new("Value", "", 22), new("Unit", "", 10), new("What it is for", "", CharactersOfWhatFor)];

    /// <summary>What these sheets say of themselves.</summary>
    public static IReadOnlyList<string> Explanations { get; } = [QuestionSheetWords.Shop, .. QuestionForm.All.Select(f => f.How)];

    /// <summary>The sheets to add, with their hidden names, and the cells of what they ask.</summary>
    /// <param name="reading">The book as read; the new cells are added to its map.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="freeName">Gives a name that no sheet has.</param>
    public static IReadOnlyList<(OwnedSheet Sheet, string OwnName)> Make(BookReading reading, IReadOnlyList<Finding> findings, Func<string, string> freeName)
    {
        // What stands in the shop file is answered there; a setting may be answered in every book.
        List<string> Asked(SubjectKind kind, Func<Finding, bool> counts) =>
        [
            .. findings.Where(counts).SelectMany(f => f.Subjects)
                .Where(s => s.Kind == kind && reading.Cells.Find(s) is null && (kind == SubjectKind.Setting || reading.Cells.InFile(s) is null))
                .Select(s => s.Key).Distinct(),
        ];
        bool Missing(string sheet) => !reading.ShopSheets.ContainsKey(sheet);

        var sheets = new List<(OwnedSheet, string)>();
        if (Missing(ShopName) && Asked(SubjectKind.Setting, f => f.Severity > Severity.Note) is { Count: > 0 } settings)
        {
            var hours = HoursOfTheNight.Where(h => !reading.Origins.ContainsKey(h));
            sheets.Add((Shop(reading, [.. settings.Union(hours)], freeName(ShopName)), OwnName.ShopQuestions));
        }

        foreach (var form in QuestionForm.All.Where(f => Missing(f.Sheet.Name)))
        {
            if (Asked(form.Sheet.Kind, form.IsAskedBy) is { Count: > 0 } names)
            {
                sheets.Add((Form(reading, form, names, freeName(form.Sheet.Name)), form.OwnName));
            }
        }

        return sheets;
    }

    private static OwnedSheet Shop(BookReading reading, IReadOnlyList<string> settings, string name)
    {
        var (cells, units) = (reading.Cells, reading.Night.Shop.Settings.Units);
        var sheet = Begin(name, QuestionSheetWords.Shop, ShopColumns);
        cells.Add(Subject.Setting(""), new CellRef(name, HeadingRow, 1));
        var order = SettingGuide.All.Select(g => g.Name).ToList();
        var row = HeadingRow;
        foreach (var guide in settings.Select(s => SettingGuide.Of(s).In(units)).OrderBy(g => order.IndexOf(g.Name) is var at && at < 0 ? int.MaxValue : at))
        {
            row++;
            sheet.Set(row, 1, guide.Name, CellLook.Strong);
            sheet.Set(row, 2, CellValue.Empty, CellLook.Box);
            sheet.Set(row, 3, guide.Unit, CellLook.Text);
            sheet.Set(row, 4, guide.WhatFor, CellLook.Text);
            sheet.Height(row, 8 + (12 * (1 + (guide.WhatFor.Length / CharactersOfWhatFor))));
            var choices = guide.Choices.Count > 0 ? guide.Choices : AlloysMeant(guide.Name);
            if (choices.Count > 0 && choices.Sum(c => c.Length + 1) <= LongestList)
            {
                sheet.Choose(new CellRange(row, 2, row, 2), choices);
            }

            cells.Add(Subject.Setting(guide.Name), new CellRef(name, row, 2));
        }

        return sheet;
    }

    /// <summary>The alloys that a question about an alloy's name can be answered with.</summary>
    private static IReadOnlyList<string> AlloysMeant(string setting) => setting.Split('"') is [_, var name, _] && setting == SettingName.AlloyMeaning(name)
        ? [.. BuiltInAlloys.Named(name).Select(a => a.Name)]
        : [];

    private static OwnedSheet Form(BookReading reading, QuestionForm form, List<string> names, string name)
    {
        var units = reading.Night.Shop.Settings.Units;
        var (sheet, kind, cells) = (Begin(name, form.How, [.. form.Columns.Select(c => c with { Heading = c.HeadingIn(units) })]), form.Sheet.Kind, reading.Cells);
        cells.Add(new Subject(kind, ""), new CellRef(name, HeadingRow, 1));
        var rows = form.EmptyRows > 0 ? form.EmptyRows : names.Count;
        for (var row = HeadingRow + 1; row <= HeadingRow + rows; row++)
        {
            var key = form.EmptyRows > 0 ? "" : names[row - HeadingRow - 1];
            sheet.Height(row, 20);
            for (var column = 1; column <= form.Columns.Count; column++)
            {
                if (column > 1 || key.Length == 0)
                {
                    sheet.Set(row, column, CellValue.Empty, CellLook.Box with { Horizontal = column == 1 ? CellLook.Left : CellLook.Right });
                }
                else
                {
                    sheet.Set(row, 1, key, CellLook.Strong);
                    cells.Add(new Subject(kind, key), new CellRef(name, row, 1));
                }

                if (key.Length > 0)
                {
                    cells.Add(new Subject(kind, key, form.Columns[column - 1].Field), new CellRef(name, row, column));
                }
            }
        }

        foreach (var (column, choices) in form.Columns.Select((c, i) => (i + 1, c.Choices)).Where(c => c.Choices.Count > 0))
        {
            sheet.Choose(new CellRange(HeadingRow + 1, column, HeadingRow + rows, column), choices);
        }

        return sheet;
    }

    private static OwnedSheet Begin(string name, string how, QuestionColumn[] columns)
    {
        var sheet = new OwnedSheet(name) { HeadingRow = HeadingRow, Landscape = true, Widths = [.. columns.Select(c => c.Width)] };
        sheet.Set(1, 1, name, CellLook.Title);
        sheet.Set(2, 1, how, CellLook.Small);
        for (var column = 1; column <= columns.Length; column++)
        {
            sheet.Set(HeadingRow, column, columns[column - 1].Heading, column == 1 ? CellLook.FirstHeading : columns[column - 1].Field.Length == 0 ? CellLook.Heading : CellLook.NumberHeading);
        }

        sheet.Height(HeadingRow, 2 + (HeightOfLine * columns.Max(c => Lines(c.Heading, c.Width))));
        return sheet;
    }

    // Lines that a heading takes where it breaks between words; bold letters are hardly wider than the digits that a width counts.
    private static int Lines(string heading, double width)
    {
        var (lines, left) = (0, 0.0);
        foreach (var word in heading.Split(' '))
        {
            if (word.Length > left)
            {
                (lines, left) = (lines + 1, width - 1);
            }

            left -= word.Length + 1;
        }

        return lines;
    }
}
