using CastBook.Planning.Findings;
using CastBook.Workbooks.Drawing;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Writing;

/// <summary>A sheet that CastBook makes: cells with their looks, and how it is shown and printed.</summary>
/// <param name="name">The name on the tab.</param>
internal sealed class OwnedSheet(string name)
{
    private readonly SortedDictionary<int, SortedDictionary<int, OwnedCell>> rows = [];
    private readonly List<(int Row, int Column, CellRef Target)> links = [];
    private readonly List<(int Row, int Column, Severity Severity)> marks = [];
    private readonly List<(CellRange Range, IReadOnlyList<string> Choices)> choices = [];
    private readonly Dictionary<int, double> heights = [];
    private readonly Dictionary<(int Row, int Column), (Subject Subject, string Answer)> answers = [];
    private readonly List<int> pageStarts = [];
    private readonly HashSet<int> hiddenRows = [];

    /// <summary>The name on the tab.</summary>
    public string Name { get; set; } = name;

    /// <summary>Column widths in characters, from column A.</summary>
    public IReadOnlyList<double> Widths { get; init; } = [];

    /// <summary>Columns that are not shown.</summary>
    public IReadOnlyList<int> HiddenColumns { get; init; } = [];

    /// <summary>Whether it is printed on its side.</summary>
    public bool Landscape { get; init; }

    /// <summary>How large it is printed, in percent, page by page as <see cref="StartPage"/> says; 0 makes it as wide as the page.</summary>
    public int PrintScale { get; init; }

    /// <summary>Whether it is printed on one page, however small that makes it.</summary>
    public bool OnePage { get; set; }

    /// <summary>Rows that are neither shown nor printed; a chart draws them all the same.</summary>
    public IReadOnlySet<int> HiddenRows => hiddenRows;

    /// <summary>Rows that begin a new page.</summary>
    public IReadOnlyList<int> PageStarts => pageStarts;

    /// <summary>Row of the headings: all down to it stays in sight, and it is printed on every page of a sheet that is as wide as one. 0 for none.</summary>
    public int HeadingRow { get; set; }

    /// <summary>The cells, by row and column.</summary>
    public IReadOnlyDictionary<int, SortedDictionary<int, OwnedCell>> Rows => rows;

    /// <summary>Cells that lead somewhere in the book.</summary>
    public IReadOnlyList<(int Row, int Column, CellRef Target)> Links => links;

    /// <summary>Cells that are marked.</summary>
    public IReadOnlyList<(int Row, int Column, Severity Severity)> Marks => marks;

    /// <summary>What the cells answer that come out of the plan.</summary>
    public IReadOnlyDictionary<(int Row, int Column), (Subject Subject, string Answer)> Answers => answers;

    /// <summary>Drop-down lists.</summary>
    public IReadOnlyList<(CellRange Range, IReadOnlyList<string> Choices)> Choices => choices;

    /// <summary>Row heights in points, where they are not the usual.</summary>
    public IReadOnlyDictionary<int, double> Heights => heights;

    /// <summary>What is drawn over the cells.</summary>
    public SheetDrawing Drawing { get; } = new();

    /// <summary>The last row with a cell.</summary>
    public int LastRow => rows.Count == 0 ? 0 : rows.Keys.Last();

    /// <summary>Sets a cell.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="value">The value.</param>
    /// <param name="look">The look.</param>
    public void Set(int row, int column, CellValue value, CellLook look)
    {
        if (!rows.TryGetValue(row, out var cells))
        {
            rows[row] = cells = [];
        }

        cells[column] = new OwnedCell(value, look);
    }

    /// <summary>Sets a cell to text.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="text">The text; empty leaves the cell empty.</param>
    /// <param name="look">The look.</param>
    public void Set(int row, int column, string? text, CellLook look) => Set(row, column, CellValue.Of(text), look);

    /// <summary>Makes a cell lead to another.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="target">Where it leads.</param>
    public void Link(int row, int column, CellRef target) => links.Add((row, column, target));

    /// <summary>Says what a cell answers, so that it can be explained.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="subject">What it is about: a flask or an alloy.</param>
    /// <param name="answer">Which answer, a constant of <see cref="Planning.Explaining.AnswerField"/>.</param>
    public void Answer(int row, int column, Subject subject, string answer) => answers[(row, column)] = (subject, answer);

    /// <summary>Marks a cell.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="severity">How it is marked.</param>
    public void Mark(int row, int column, Severity severity) => marks.Add((row, column, severity));

    /// <summary>Gives cells a drop-down list; other values stay allowed.</summary>
    /// <param name="range">The cells.</param>
    /// <param name="list">The choices, without commas.</param>
    public void Choose(CellRange range, params IReadOnlyList<string> list) => choices.Add((range, list));

    /// <summary>Begins a new page; heeded only where <see cref="PrintScale"/> is given.</summary>
    /// <param name="row">Its first row, from 1.</param>
    public void StartPage(int row) => pageStarts.Add(row);

    /// <summary>Hides a row.</summary>
    /// <param name="row">Row, from 1.</param>
    public void HideRow(int row) => hiddenRows.Add(row);

    /// <summary>Sets the height of a row.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="points">Height in points.</param>
    public void Height(int row, double points) => heights[row] = points;
}

/// <summary>A cell of an owned sheet.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Look">Its look.</param>
internal readonly record struct OwnedCell(CellValue Value, CellLook Look);
