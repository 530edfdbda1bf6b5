using System.Globalization;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Settings;

/// <summary>One of the shop's sheets, its headings found.</summary>
internal sealed class ShopTable
{
    /// <summary>Letters of the longest name of a line; what is longer is a sentence.</summary>
    public const int LongestName = 40;

    private static readonly Dictionary<string, IReadOnlyList<string>> NoMoreWords = [];

    private readonly Dictionary<string, NumberSigns> signs = new(StringComparer.Ordinal);
    private readonly HashSet<string> liquids = new(StringComparer.Ordinal);
    private readonly HashSet<string> ounces = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CellRef> astray = new(StringComparer.Ordinal);

    private ShopTable(ShopSheet sheet, SheetPart part, SheetGrid grid, CellValues values, int headingRow, HeadingMatch match)
    {
        (Sheet, Part, Grid, Values, HeadingsRow) = (sheet, part, grid, values, headingRow);
        Fields = match.Fields;
        foreach (var tie in match.Ties)
        {
            var heading = Heading.Parse(grid.Cell(headingRow, tie.First).Text ?? "").Text;
            Findings.Add(Catalogue.ShopHeadingAmbiguous.At(
                new Subject(sheet.Kind, "", tie.Field), $"{part.Name}!{CellRef.ColumnName(tie.First)}", CellRef.ColumnName(tie.Second), heading));
        }

        SayAstray(HeadingRow.Read(grid, headingRow));
    }

    // "Water (oz)" is read neither as weight nor as volume: the heading is asked about.
    private void SayAstray(IReadOnlyList<(int Column, Heading Heading)> headings)
    {
        foreach (var (column, heading) in headings)
        {
            if (heading.Astray(Sheet.Index) is { Unit: { } unit } sense && Sheet.Index.Fields[sense.Known.FieldAt] is var meant
                && !Fields.ContainsKey(meant.Field) && Fields.Values.All(f => f.Column != column))
            {
                var cell = astray[meant.Field] = new CellRef(Part.Name, HeadingsRow, column);
                Findings.Add(Catalogue.ShopUnitAstray.At(
                    new Subject(Sheet.Kind, "", meant.Field), cell.ToString(), heading.Text, unit.Name, MeasureWords.Of(meant.Dimension),
                    MeasureWords.SuchAs(meant.Dimension)));
            }
        }
    }

    public ShopSheet Sheet { get; }

    public SheetPart Part { get; }

    public SheetGrid Grid { get; }

    public int HeadingsRow { get; }

    public CellValues Values { get; }

    public IReadOnlyDictionary<string, FieldColumn> Fields { get; }

    public List<Finding> Findings { get; } = [];

    /// <summary>Finds the headings of a sheet; null where it has none of its kind.</summary>
    public static ShopTable? Find(ShopSheet sheet, SheetPart part, SheetGrid grid, CellValues values)
    {
        ShopTable? best = null;
        foreach (var row in grid.Rows.TakeWhile(r => r <= HeadingRow.Last))
        {
            var match = HeadingMatch.Of(HeadingRow.Read(grid, row), sheet.Index, NoMoreWords);
            if (match.Fields.ContainsKey(ShopField.Name) && match.Fields.Count >= 2 && match.Fields.Count > (best?.Fields.Count ?? 0))
            {
                best = new ShopTable(sheet, part, grid, values, row, match);
            }
        }

        return best;
    }

    /// <summary>The unit meant where a heading names none and the trade does not count in the base unit.</summary>
    public static CellUnit? UsualUnit(string field) =>
        field is ShopField.SetAtLeast or ShopField.Hold or ShopField.KeptHot && CellUnit.TryParse("h", out var hours) ? hours : null;

    public Dimension DimensionOf(string field) => Sheet.Columns.First(c => c.Field == field).Dimension;

    /// <summary>What the texts of a column settle about the signs in its numbers; where they settle nothing, a point marks decimals.</summary>
    public NumberSigns SignsOf(string field)
    {
        if (!signs.TryGetValue(field, out var known))
        {
            var settled = ColumnHabits.Of(Grid, Fields[field].Column, [.. Grid.Rows.Where(r => r > HeadingsRow)], isDay: false).Signs;
            signs[field] = known = settled == NumberSigns.None ? NumberSigns.DecimalPoint : settled;
        }

        return known;
    }

    /// <summary>Says once a column that its liquid measures name no country.</summary>
    /// <param name="about">The first cell with one.</param>
    /// <param name="typed">What it shows.</param>
    /// <param name="millilitres">What it was read as.</param>
    public void SayLiquid(Subject about, string typed, double millilitres)
    {
        if (liquids.Add(about.Field))
        {
            Findings.Add(Catalogue.LiquidIsUs.At(about, Fields[about.Field].Heading.Text, typed, string.Create(CultureInfo.InvariantCulture, $"{millilitres:#,0} ml")));
        }
    }

    /// <summary>Says once a column that its ounces are no troy ounces: a check for metal, a note for powder and wax.</summary>
    /// <param name="about">The first cell with one.</param>
    /// <param name="typed">What it shows.</param>
    /// <param name="grams">What it was read as.</param>
    public void SayOunce(Subject about, string typed, double grams)
    {
        if (ounces.Add(about.Field))
        {
            Findings.Add(PlainOunce.Of(about.Field).At(about, Fields[about.Field].Heading.Text, typed, PlainOunce.Said(grams)));
        }
    }

    /// <summary>The rows that have a name; with <paramref name="continued"/>, rows without one that say anything belong to the name above.</summary>
    public IEnumerable<ShopRow> Rows(bool continued = false)
    {
        var nameColumn = Fields[ShopField.Name].Column;
        string? above = null;
        foreach (var row in Grid.Rows.Where(r => r > HeadingsRow))
        {
            var name = Values.Text(Grid.Cell(row, nameColumn)) ?? ByMeasures(row);
            if (name is not null && IsRemark(name, row))
            {
                continue;
            }

            if (name is null && !(continued && above is not null && Fields.Values.Any(f => !CellValues.IsBlank(Grid.Cell(row, f.Column)))))
            {
                continue;
            }

            above = name ?? above;
            yield return new ShopRow(this, row, above!);
        }
    }

    // A size of flask is called by its measures where nobody named it.
    private string? ByMeasures(int row)
    {
        if (Sheet.Kind != SubjectKind.FlaskSize || Millimetres(row, ShopField.InsideDiameter) is not { } diameter || Millimetres(row, ShopField.Height) is not { } height)
        {
            return null;
        }

        var name = string.Create(CultureInfo.InvariantCulture, $"{diameter:0.#} × {height:0.#}");
        Findings.Add(Catalogue.FlaskNamedByMeasures.At(
            new Subject(SubjectKind.FlaskSize, name), new CellRef(Part.Name, row, Fields[ShopField.Name].Column).ToString(), name));
        return name;
    }

    private double? Millimetres(int row, string field) =>
        Fields.TryGetValue(field, out var column)
        && Values.Number(Grid.Cell(row, column.Column), Dimension.Length, column.Unit, SignsOf(field)) is { Outcome: ReadOutcome.Read, Value: > 0 and var value }
            ? value
            : null;

    // A sentence in the first column with nothing beside it explains the sheet; it names nothing.
    private bool IsRemark(string name, int row) =>
        (name.Length > LongestName || name[^1] is '.' or ':')
        && Fields.Values.All(f => f.Field == ShopField.Name || CellValues.IsBlank(Grid.Cell(row, f.Column)));

    /// <summary>Notes where the sheet's headings stand.</summary>
    /// <param name="cells">Where it is noted.</param>
    public void Map(CellMap cells)
    {
        cells.Add(new Subject(Sheet.Kind, ""), new CellRef(Part.Name, HeadingsRow, Fields[ShopField.Name].Column));
        foreach (var (field, cell) in astray)
        {
            cells.Add(new Subject(Sheet.Kind, "", field), cell);
        }
    }

    /// <summary>The rows by name, each name once; a name that stands twice is said.</summary>
    public IEnumerable<ShopRow> NamedRows()
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in Rows())
        {
            if (seen.Add(row.Name))
            {
                yield return row;
            }
            else
            {
                Findings.Add(Catalogue.ShopNameTwice.At(new Subject(Sheet.Kind, row.Name, ShopField.Name), $"{Sheet.Called} {row.Name}", Part.Name));
            }
        }
    }
}
