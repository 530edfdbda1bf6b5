using CastBook.Casting.Metals;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sheets;

/// <summary>
/// The sheets in which a shop answers what is asked and its book has no cell for: Shop, Flasks, Materials, Alloys. Each is
/// added once, holds only what is asked, and is the shop's from then on.
/// </summary>
internal static class QuestionSheets
{
    private const int HeadingRow = 4;
    private const int EmptyRows = 8;

    // An office program repairs a book with a longer list of choices.
    private const int LongestList = 255;

    private const string HowShop = "Answer in the framed cells, save, and fill the book again.";
    private const string HowFlasks = "A line for each size of flask you own. Sizes are inside sizes; the base height reaches up to where the first gate may stand; Per tree is for pieces without sizes.";
    private const string HowMaterials = "What your patterns are made of. Type wax or resin, and the density you weighed and measured.";
    private const string HowAlloys = "Your alloys. Take the temperatures from the maker's data sheet; an empty cell is asked for where it matters.";

    private static readonly (string Heading, string Field, double Width)[] FlaskColumns =
    [
        ("Size", ShopField.Name, 16), ("Inside diameter (mm)", ShopField.InsideDiameter, 12), ("Height (mm)", ShopField.Height, 10),
        ("Owned", ShopField.Owned, 9), ("Sprue diameter (mm)", ShopField.SprueDiameter, 12), ("Base height (mm)", ShopField.BaseHeight, 11),
        ("Cup (ml)", ShopField.Cup, 9), ("Per tree", ShopField.PerTree, 10),
    ];

    private static readonly (string Heading, string Field, double Width)[] MaterialColumns =
        [("Material", ShopField.Name, 26), ("Kind", ShopField.Kind, 12), ("Density (g/cm³)", ShopField.Density, 14)];

    private static readonly (string Heading, string Field, double Width)[] AlloyColumns =
    [
        ("Alloy", ShopField.Name, 26), ("Density (g/cm³)", ShopField.Density, 11), ("Metal temp (°C)", ShopField.MetalTemperature, 11),
        ("Flask temp fine (°C)", ShopField.FlaskTemperatureFine, 12), ("Flask temp ordinary (°C)", ShopField.FlaskTemperatureOrdinary, 12),
        ("Flask temp heavy (°C)", ShopField.FlaskTemperatureHeavy, 12), ("Quench after (min)", ShopField.QuenchAfter, 11),
        ("Fresh (g)", ShopField.Fresh, 11), ("Re-melt (g)", ShopField.Remelt, 11),
    ];

    /// <summary>What these sheets say of themselves.</summary>
    public static IReadOnlyList<string> Explanations { get; } = [HowShop, HowFlasks, HowMaterials, HowAlloys];

    /// <summary>The sheets to add, with their hidden names, and the cells of what they ask.</summary>
    /// <param name="reading">The book as read; the new cells are added to its map.</param>
    /// <param name="findings">What was found.</param>
    /// <param name="freeName">Gives a name that no sheet has.</param>
    public static IReadOnlyList<(OwnedSheet Sheet, string OwnName)> Make(BookReading reading, IReadOnlyList<Finding> findings, Func<string, string> freeName)
    {
        var open = findings.Where(f => f.Severity > Severity.Note).SelectMany(f => f.Subjects)
            .Where(s => reading.Cells.Find(s) is null).Distinct().ToList();
        IReadOnlyList<string> Asked(SubjectKind kind) => [.. open.Where(s => s.Kind == kind).Select(s => s.Key).Distinct()];
        bool Missing(string sheet) => !reading.ShopSheets.ContainsKey(sheet);

        var sheets = new List<(OwnedSheet, string)>();
        if (Asked(SubjectKind.Setting) is { Count: > 0 } settings && Missing("Shop"))
        {
            sheets.Add((Shop(reading.Cells, settings, freeName("Shop")), OwnName.ShopQuestions));
        }

        if (Asked(SubjectKind.FlaskSize).Count > 0 && Missing("Flasks"))
        {
            sheets.Add((Flasks(reading.Cells, freeName("Flasks")), OwnName.FlasksQuestions));
        }

        if (Asked(SubjectKind.Material) is { Count: > 0 } materials && Missing("Materials"))
        {
            sheets.Add((Rows(reading.Cells, SubjectKind.Material, freeName("Materials"), MaterialColumns, materials, HowMaterials), OwnName.MaterialsQuestions));
        }

        if (Asked(SubjectKind.Alloy) is { Count: > 0 } alloys && Missing("Alloys"))
        {
            sheets.Add((Rows(reading.Cells, SubjectKind.Alloy, freeName("Alloys"), AlloyColumns, alloys, HowAlloys), OwnName.AlloysQuestions));
        }

        return sheets;
    }

    private static OwnedSheet Shop(CellMap cells, IReadOnlyList<string> settings, string name)
    {
        var sheet = Begin(name, HowShop, [("Setting", "", 30), ("Value", "", 22), ("Unit", "", 10), ("What it is for", "", 78)]);
        cells.Add(Subject.Setting(""), new CellRef(name, HeadingRow, 1));
        var order = SettingGuide.All.Select(g => g.Name).ToList();
        var row = HeadingRow;
        foreach (var guide in settings.Select(SettingGuide.Of).OrderBy(g => order.IndexOf(g.Name) is var at && at < 0 ? int.MaxValue : at))
        {
            row++;
            sheet.Set(row, 1, guide.Name, Look.Strong);
            sheet.Set(row, 2, CellValue.Empty, Look.Box);
            sheet.Set(row, 3, guide.Unit, Look.Text);
            sheet.Set(row, 4, guide.WhatFor, Look.Text);
            sheet.Height(row, guide.WhatFor.Length > 78 ? 32 : 20);
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

    private static OwnedSheet Flasks(CellMap cells, string name)
    {
        var sheet = Begin(name, HowFlasks, FlaskColumns);
        for (var row = HeadingRow + 1; row <= HeadingRow + EmptyRows; row++)
        {
            for (var column = 1; column <= FlaskColumns.Length; column++)
            {
                sheet.Set(row, column, CellValue.Empty, Look.Box with { Horizontal = column == 1 ? "left" : "right" });
            }

            sheet.Height(row, 20);
        }

        cells.Add(new Subject(SubjectKind.FlaskSize, ""), new CellRef(name, HeadingRow, 1));
        return sheet;
    }

    private static OwnedSheet Rows(
        CellMap cells, SubjectKind kind, string name, (string Heading, string Field, double Width)[] columns, IReadOnlyList<string> rows, string how)
    {
        var sheet = Begin(name, how, columns);
        cells.Add(new Subject(kind, ""), new CellRef(name, HeadingRow, 1));
        var row = HeadingRow;
        foreach (var key in rows)
        {
            row++;
            sheet.Set(row, 1, key, Look.Strong);
            sheet.Height(row, 20);
            cells.Add(new Subject(kind, key), new CellRef(name, row, 1));
            for (var column = 2; column <= columns.Length; column++)
            {
                sheet.Set(row, column, CellValue.Empty, Look.Box with { Horizontal = "right" });
                cells.Add(new Subject(kind, key, columns[column - 1].Field), new CellRef(name, row, column));
            }
        }

        return sheet;
    }

    private static OwnedSheet Begin(string name, string how, (string Heading, string Field, double Width)[] columns)
    {
        var sheet = new OwnedSheet(name) { HeadingRow = HeadingRow, Landscape = true, Widths = [.. columns.Select(c => c.Width)] };
        sheet.Set(1, 1, name, Look.Title);
        sheet.Set(2, 1, how, Look.Small);
        for (var column = 1; column <= columns.Length; column++)
        {
            sheet.Set(HeadingRow, column, columns[column - 1].Heading, column == 1 ? Look.FirstHeading : columns[column - 1].Field.Length == 0 ? Look.Heading : Look.NumberHeading);
        }

        sheet.Height(HeadingRow, 32);
        return sheet;
    }
}
