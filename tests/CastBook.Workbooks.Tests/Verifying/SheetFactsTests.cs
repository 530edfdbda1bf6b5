using System.Text;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Verifying;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Verifying;

/// <summary>Rows of a list are passed whole where they are what was read and, behind it, what was to be written.</summary>
public sealed class SheetFactsTests
{
    private const string Sheet = "xl/worksheets/sheet1.xml";
    private const int OursFrom = 3;

    private static readonly string[] Rows =
    [
        "<c r=\"A1\" s=\"7\"><v>1</v></c><c r=\"B1\" t=\"s\"><v>9</v></c>",
        "<c r=\"A2\"><v>1</v></c><c r=\"B2\"><f>A2*2</f><v>2</v></c>",
    ];

    [Fact]
    public void Read_RowsAsTheyWereRead_ArePassedWhole()
    {
        var facts = Facts(Rows, text => text);

        facts.Unwritten.ShouldBeEmpty();
        facts.Disorder.ShouldBeEmpty();
        // Our format is the highest that was looked at; the shop's strings and formats were there before.
        (facts.HighestFormat, facts.HighestString).ShouldBe((5, -1));
    }

    [Theory]
    [InlineData("<c r=\"A1\" s=\"7\">", "<c r=\"A1\" s=\"8\">", 8, 9)]
    [InlineData("<v>9</v>", "<v>10</v>", 7, 10)]
    [InlineData("</row>", "</row >", 7, 9)]
    public void Read_RowsThatAreNoLongerAsTheyWere_AreLookedInto(string was, string now, int format, int text)
    {
        var facts = Facts(Rows, xml => xml.Replace(was, now, StringComparison.Ordinal));

        facts.Unwritten.ShouldBeEmpty();
        (facts.HighestFormat, facts.HighestString).ShouldBe((format, text));
    }

    [Theory]
    [InlineData("<v>12.5</v>", "<v>12.6</v>", "C1 C2")]
    [InlineData("<c r=\"C2\" s=\"5\"><v>12.5</v></c>", "", "C2")]
    [InlineData("<c r=\"D1\" s=\"5\"/>", "<c r=\"D1\" s=\"5\"><v>0</v></c>", "D1")]
    public void Read_CellsThatDoNotSayWhatWasWritten_AreFound(string was, string now, string cells) =>
        Facts(Rows, xml => xml.Replace(was, now, StringComparison.Ordinal)).Unwritten.ShouldBe(cells.Split(' '));

    [Fact]
    public void Read_WrittenCellBehindOneOfTheShopFurtherRight_IsOutOfOrder()
    {
        // The splicer would not do so; nobody takes its word for it.
        string[] rows = ["<c r=\"A1\"><v>1</v></c><c r=\"E1\"><v>2</v></c>"];

        var facts = Facts(rows, xml => xml
            .Replace(Ours(1), "", StringComparison.Ordinal)
            .Replace("</row>", Ours(1) + "</row>", StringComparison.Ordinal));

        facts.Disorder.ShouldBe(["Pieces: cell C1 comes after E1."]);
    }

    [Fact]
    public void DigestOf_RowsOfPlainCells_IsThatOfTheirBytes()
    {
        var grid = Grid([.. Rows, "", "<c r=\"A4\"><f t=\"shared\" si=\"0\" ref=\"A4:A9\">1+1</f><v>2</v></c>", "<!-- here --><c r=\"A5\"><v>1</v></c>"]);

        grid.DigestOf(1).ShouldBe(RowCells.Digest(Encoding.UTF8.GetBytes(Rows[0])));
        grid.DigestOf(2).ShouldNotBe(grid.DigestOf(1));
        // Formulas may belong together across rows, and what stands among cells is no cell.
        (grid.DigestOf(4), grid.DigestOf(5), grid.DigestOf(6)).ShouldBe((0u, 0u, 0u));
    }

    private static string Ours(int row) => $"<c r=\"C{row}\" s=\"5\"><v>12.5</v></c><c r=\"D{row}\" s=\"5\"/>";

    private static BookBuilder Book(string[] rows) => new BookBuilder().Sheet("Pieces", s => s.Row("-")).Part(
        Sheet, $"<worksheet xmlns=\"{BookBuilder.MainNamespace}\"><sheetData>{string.Concat(rows.Select((r, i) => $"<row r=\"{i + 1}\">{r}</row>"))}</sheetData></worksheet>");

    private static SheetGrid Grid(string[] rows)
    {
        using var book = Book(rows).Build();
        using var package = BookPackage.Open(book);
        return SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package));
    }

    /// <summary>What is seen of a sheet that is read, written and changed behind our back.</summary>
    private static SheetFacts Facts(string[] rows, Func<string, string> change)
    {
        using var book = Book(rows).Build();
        using var package = BookPackage.Open(book);
        var edits = new SheetEdits { List = new ListOf(SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package))) };
        using var written = new MemoryStream();
        using (var part = package.OpenPart(Sheet))
        {
            SheetSplicer.Apply(part, written, edits);
        }

        var text = Encoding.UTF8.GetString(written.ToArray());
        text.ShouldContain(Ours(1));
        var changed = change(text);
        using var read = new MemoryStream(Encoding.UTF8.GetBytes(changed));
        return SheetFacts.Read(read, package.Sheets[0], edits);
    }

    private sealed class ListOf(SheetGrid grid) : RowEdits
    {
        public override IReadOnlyList<int> Rows => grid.Rows;

        public override void Add(int row, List<CellEdit> edits) =>
            edits.AddRange([new CellEdit(OursFrom, CellValue.Of(12.5), 5), new CellEdit(OursFrom + 1, CellValue.Empty, 5)]);

        public override uint DigestOf(int row) => grid.DigestOf(row);
    }
}
