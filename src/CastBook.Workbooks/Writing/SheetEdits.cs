using CastBook.Workbooks.Reading.Grid;

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

    private readonly SortedDictionary<int, List<CellEdit>> cells = [];
    private readonly Dictionary<string, Func<byte[], byte[]?>> changes = new(StringComparer.Ordinal);
    private readonly List<SheetInsert> inserts = [];

    /// <summary>The values of a list's rows, made when they are asked for: a long list would take much memory at once.</summary>
    public RowEdits? List { get; set; }

    /// <summary>The rows with edits, ascending.</summary>
    public IEnumerable<int> Rows => List is { } list ? Merge([.. cells.Keys], list.Rows) : cells.Keys;

    /// <summary>Whether any cell is to be changed.</summary>
    public bool HasCells => cells.Count > 0 || List is { Rows.Count: > 0 };

    /// <summary>Whether nothing is to be done.</summary>
    public bool IsEmpty => !HasCells && changes.Count == 0 && inserts.Count == 0;

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
    public void Set(int row, int column, CellValue value, int? newStyle) => Set(row, new CellEdit(column, value, newStyle));

    /// <summary>Takes a cell out, its format too.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public void Remove(int row, int column) => Set(row, new CellEdit(column, CellValue.Empty, null, IsRemoval: true));

    /// <summary>The edits of a row in column order.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="edits">Where to; emptied first.</param>
    public void Collect(int row, List<CellEdit> edits)
    {
        edits.Clear();
        List?.Add(row, edits);
        if (cells.TryGetValue(row, out var more))
        {
            foreach (var edit in more)
            {
                Set(edits, edit);
            }
        }

        // Mostly in order already.
        for (var i = 1; i < edits.Count; i++)
        {
            for (var at = i; at > 0 && edits[at - 1].Column > edits[at].Column; at--)
            {
                (edits[at - 1], edits[at]) = (edits[at], edits[at - 1]);
            }
        }
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

    private void Set(int row, CellEdit edit)
    {
        if (!cells.TryGetValue(row, out var edits))
        {
            cells[row] = edits = [];
        }

        Set(edits, edit);
    }

    private static void Set(List<CellEdit> edits, CellEdit edit)
    {
        var same = edits.FindIndex(e => e.Column == edit.Column);
        if (same >= 0)
        {
            edits[same] = edit;
        }
        else
        {
            edits.Add(edit);
        }
    }

    private static IEnumerable<int> Merge(int[] some, IReadOnlyList<int> others)
    {
        var at = 0;
        foreach (var other in others)
        {
            while (at < some.Length && some[at] < other)
            {
                yield return some[at++];
            }

            at += at < some.Length && some[at] == other ? 1 : 0;
            yield return other;
        }

        while (at < some.Length)
        {
            yield return some[at++];
        }
    }
}

/// <summary>The values of a list's rows, made row by row.</summary>
internal abstract class RowEdits
{
    /// <summary>The rows of the list that have edits or may have some, ascending.</summary>
    public abstract IReadOnlyList<int> Rows { get; }

    /// <summary>Adds the edits of a row; none where it has none.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="edits">Where to.</param>
    public abstract void Add(int row, List<CellEdit> edits);

    /// <summary>The digest of a row's cells as they were read (<see cref="RowCells.Digest"/>); 0 where none was taken.</summary>
    /// <param name="row">Row, from 1.</param>
    public abstract uint DigestOf(int row);
}

/// <summary>An element to put into a sheet.</summary>
/// <param name="Rank">Its place in the order of a sheet's elements.</param>
/// <param name="Xml">The element, <c>~</c> where the part's prefix belongs.</param>
/// <param name="OnlyIfAbsent">Whether it gives way to an element of the same place that the sheet has.</param>
internal readonly record struct SheetInsert(int Rank, string Xml, bool OnlyIfAbsent);
