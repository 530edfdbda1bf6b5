namespace CastBook.Workbooks.Writing;

/// <summary>Everything CastBook wants changed in one sheet part: cells, and elements around the cells.</summary>
internal sealed class SheetEdits
{
    /// <summary>The order in which a sheet's elements must stand; a wrong order makes office programs repair the file.</summary>
    private static readonly string[] Order =
    [
        "sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection",
        "protectedRanges", "scenarios", "autoFilter", "sortState", "dataConsolidate", "customSheetViews", "mergeCells",
        "phoneticPr", "conditionalFormatting", "dataValidations", "hyperlinks", "printOptions", "pageMargins", "pageSetup",
        "headerFooter", "rowBreaks", "colBreaks", "customProperties", "cellWatches", "ignoredErrors", "smartTags",
        "drawing", "legacyDrawing", "legacyDrawingHF", "drawingHF", "picture", "oleObjects", "controls", "webPublishItems",
        "tableParts", "extLst",
    ];

    private readonly SortedDictionary<int, List<CellEdit>> rows = [];
    private readonly Dictionary<string, Func<byte[], byte[]?>> changes = new(StringComparer.Ordinal);
    private readonly List<SheetInsert> inserts = [];

    /// <summary>Rows with edits, ascending; within a row any order until <see cref="Sorted"/>.</summary>
    public IReadOnlyDictionary<int, List<CellEdit>> Rows => rows;

    /// <summary>Whether nothing is to be done.</summary>
    public bool IsEmpty => rows.Count == 0 && changes.Count == 0 && inserts.Count == 0;

    /// <summary>Elements to put in, by their place in the order.</summary>
    public IEnumerable<SheetInsert> Inserts => inserts.OrderBy(i => i.Rank);

    /// <summary>Where an element stands in the order; unknown ones (extensions) stand where they are.</summary>
    /// <param name="localName">The element's name without prefix.</param>
    public static int RankOf(string localName) => Array.IndexOf(Order, localName);

    /// <summary>Sets a cell; the last word on a cell wins.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="value">The value.</param>
    /// <param name="newStyle">Cell format where the cell does not exist yet.</param>
    public void Set(int row, int column, CellValue value, int? newStyle)
    {
        if (!rows.TryGetValue(row, out var cells))
        {
            rows[row] = cells = [];
        }

        var edit = new CellEdit(column, value, newStyle);
        var same = cells.FindIndex(c => c.Column == column);
        if (same >= 0)
        {
            cells[same] = edit;
        }
        else
        {
            cells.Add(edit);
        }
    }

    /// <summary>The edits of a row in column order.</summary>
    /// <param name="row">Row, from 1.</param>
    public List<CellEdit> Sorted(int row)
    {
        var cells = rows[row];
        cells.Sort((a, b) => a.Column.CompareTo(b.Column));
        return cells;
    }

    /// <summary>Changes each element of a name that stands directly in the sheet: new bytes, or null to remove it.</summary>
    /// <param name="localName">The element's name without prefix.</param>
    /// <param name="change">From the element's bytes to the new ones.</param>
    public void Change(string localName, Func<byte[], byte[]?> change) => changes[localName] = change;

    /// <summary>The change for elements of a name, where there is one.</summary>
    /// <param name="localName">The element's name without prefix.</param>
    public Func<byte[], byte[]?>? ChangeOf(string localName) => changes.GetValueOrDefault(localName);

    /// <summary>Puts an element in before the first element that stands at or after its place.</summary>
    /// <param name="localName">The element's name, which gives its place.</param>
    /// <param name="xml">The element, <c>~</c> where the part's prefix belongs.</param>
    public void Insert(string localName, string xml) => inserts.Add(new SheetInsert(RankOf(localName), xml, OnlyIfAbsent: false));

    /// <summary>Changes the element of a name where the sheet has one, and puts one in where it has none.</summary>
    /// <param name="localName">The element's name.</param>
    /// <param name="change">From the element's bytes to the new ones.</param>
    /// <param name="xml">The element where there is none, <c>~</c> where the part's prefix belongs.</param>
    public void ChangeOrInsert(string localName, Func<byte[], byte[]?> change, string xml)
    {
        Change(localName, change);
        inserts.Add(new SheetInsert(RankOf(localName), xml, OnlyIfAbsent: true));
    }
}

/// <summary>An element to put into a sheet.</summary>
/// <param name="Rank">Its place in the order of a sheet's elements.</param>
/// <param name="Xml">The element, <c>~</c> where the part's prefix belongs.</param>
/// <param name="OnlyIfAbsent">Whether it gives way to an element of the same place that the sheet has.</param>
internal readonly record struct SheetInsert(int Rank, string Xml, bool OnlyIfAbsent);
