using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Tests.Fidelity;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Drawing;

/// <summary>The drawings of trees in a filled book.</summary>
public sealed partial class TreeDrawingTests
{
    private const string Part = "xl/drawings/drawing1.xml";

    private static readonly byte[] Demo = File.ReadAllBytes(TestBooks.PathOf("templates/wrenmoor-night/wrenmoor-night.xlsx"));

    [Fact]
    public void Fill_TreesWithKnownSizes_AreDrawnFromTheSideAndFromAbove()
    {
        var filled = Filled.From(Demo);
        var drawn = filled.Plan.Flasks.Where(f => f.Columns.Count > 0).Select(f => f.Letter).ToList();

        drawn.Count.ShouldBeGreaterThan(2);
        Names(filled.Part(Part)).ShouldBe(drawn.SelectMany(l => new[] { $"CastBook tree {l} from the side", $"CastBook tree {l} from above" }));
    }

    [Fact]
    public void Fill_Tree_IsDescribedForThoseWhoCannotSeeIt()
    {
        var filled = Filled.From(Demo);
        var flask = filled.Plan.Flasks.First(f => f.Columns.Count > 1);

        filled.Part(Part).ShouldContain($"descr=\"Tree {flask.Letter} from above: {flask.Columns.Count} columns round the trunk, numbered clockwise from the right.\"");
    }

    // From the side the columns at the right and the left are drawn, from above one box for each kind of piece in a column.
    [Fact]
    public void Fill_Tree_HasEveryPieceOfTheDrawnColumns()
    {
        var filled = Filled.From(Demo);
        var flask = filled.Plan.Flasks.First(f => f.Columns.Count > 1);
        var right = flask.Columns[0].Places.Count;
        var group = Group(filled.Part(Part), $"CastBook tree {flask.Letter} from the side");

        Regex.Count(group, "prst=\"line\"").ShouldBeGreaterThanOrEqualTo(right);
        Regex.Count(group, "prst=\"line\"").ShouldBeLessThanOrEqualTo(flask.Columns.Sum(c => c.Places.Count));
    }

    // What is cut off at the edge of the page nobody hangs.
    [Fact]
    public void Fill_LinesBesideATree_EndOnThePageAndLoseNothing()
    {
        var filled = Filled.From(Demo);
        var grid = filled.Grid("Trees");
        var lines = grid.Rows.Select(row => grid.Cell(row, 3)).Where(c => c.Kind == CellKind.Text).Select(c => c.Text!).ToList();
        var all = string.Join(' ', lines);

        lines.Max(l => l.Length).ShouldBeInRange(80, 93);
        Regex.Count(all, @"\(drawn at the right\)").ShouldBe(filled.Plan.Flasks.Count(f => f.Columns.Count > 0));
        Regex.Count(all, "° to the trunk").ShouldBe(filled.Plan.Flasks.Where(f => f.Columns.Count > 0).Sum(f => f.Pieces.Count));
        Regex.Matches(all, @"no\. \d+ ×(\d+), gates? ").Sum(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))
            .ShouldBe(filled.Plan.Flasks.Sum(f => f.Columns.Sum(c => c.Places.Count)));
    }

    // Whoever waxes up has no other measure of how far apart the columns stand.
    [Fact]
    public void Fill_Columns_SayHowFarRoundTheyAre()
    {
        var filled = Filled.From(Demo);
        var grid = filled.Grid("Trees");
        var said = grid.Rows.Select(row => Regex.Match(grid.Cell(row, 3).Text ?? "", @"^at (\d+)°: no\.")).Where(m => m.Success).Select(m => m.Groups[1].Value);

        said.ShouldBe(filled.Plan.Flasks.SelectMany(f => f.Columns).Select(c => c.Middle.Degrees.ToString("0", CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Fill_SomebodyDrewOnTheSheet_HisShapeStaysAndOursAreDrawnAnew()
    {
        var filled = Filled.From(Demo);
        var note = Anchor().Match(filled.Part(Part)).Value.Replace("CastBook tree", "Ann's arrow", StringComparison.Ordinal);
        var drawn = Change(filled.Bytes, xml => xml.Replace("</xdr:wsDr>", note + "</xdr:wsDr>", StringComparison.Ordinal));

        var again = Filled.From(Change(drawn, xml => xml.Replace("prst=\"line\"", "prst=\"wave\"", StringComparison.Ordinal)));

        again.Part(Part).ShouldContain(note.Replace("prst=\"line\"", "prst=\"wave\"", StringComparison.Ordinal));
        Names(again.Part(Part)).Count(n => n.StartsWith("CastBook ", StringComparison.Ordinal)).ShouldBe(Names(filled.Part(Part)).Count);
        Regex.Count(again.Part(Part), "prst=\"wave\"").ShouldBe(Regex.Count(note, "prst=\"line\""));
        again.Again().Result.Changed.ShouldBeFalse();
    }

    [Fact]
    public void Fill_StrictBook_DrawsInItsNamespaces()
    {
        var strict = File.ReadAllBytes(TestBooks.PathOf("04_strict_iso29500.xlsx"));
        var filled = Filled.From(strict);

        Validator.NewMessages(strict, filled.Bytes).ShouldBeEmpty();
    }

    [Fact]
    public void Fill_DrawnTrees_PassTheValidator() =>
        Validator.NewMessages(Demo, Filled.From(Demo).Bytes).ShouldBeEmpty();

    private static byte[] Change(byte[] book, Func<string, string> change) =>
        Planted.In(book, Part, content => Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(content))));

    private static List<string> Names(string xml) =>
        [.. Anchor().Matches(xml).Select(a => Regex.Match(a.Value, "cNvPr id=\"[0-9]+\" name=\"([^\"]*)\"").Groups[1].Value)];

    private static string Group(string xml, string name) =>
        Anchor().Matches(xml).Select(a => a.Value).Single(a => a.Contains($"name=\"{name}\"", StringComparison.Ordinal));

    [GeneratedRegex("<xdr:oneCellAnchor .*?</xdr:oneCellAnchor>", RegexOptions.Singleline)]
    private static partial Regex Anchor();
}
