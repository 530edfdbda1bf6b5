using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class TableEditsTests
{
    [Theory]
    [InlineData(false, "A4:C17", "A4:B17", "A4:E17")]
    [InlineData(true, "A4:C17", "A4:B16", "A4:E16")]
    public void Widen_Table_RangeFilterAndColumnsGoTogether(bool totals, string range, string filter, string wideFilter)
    {
        var xml = $"<table id=\"1\" ref=\"{range}\"><autoFilter ref=\"{filter}\"><filterColumn colId=\"1\"/></autoFilter>"
            + "<tableColumns count=\"3\"><tableColumn id=\"1\" name=\"Piece\"/><tableColumn id=\"9\" name=\"Qty\"/><tableColumn id=\"2\" name=\"Alloy\"><calculatedColumnFormula>1</calculatedColumnFormula></tableColumn></tableColumns>"
            + "<tableStyleInfo name=\"x\"/></table>";

        Widen(xml, Table(range, totals)).ShouldBe(
            $"<table id=\"1\" ref=\"A4:E17\"><autoFilter ref=\"{wideFilter}\"><filterColumn colId=\"1\"/></autoFilter>"
            + "<tableColumns count=\"5\"><tableColumn id=\"1\" name=\"Piece\"/><tableColumn id=\"9\" name=\"Qty\"/><tableColumn id=\"2\" name=\"Alloy\"><calculatedColumnFormula>1</calculatedColumnFormula></tableColumn>"
            + "<tableColumn id=\"10\" name=\"Metal (g)\"/><tableColumn id=\"11\" name=\"&lt;Checks&gt;\"/></tableColumns>"
            + "<tableStyleInfo name=\"x\"/></table>");
    }

    [Fact]
    public void Widen_TableWithoutFilter_GetsNone() => Widen(
        "<x:table ref=\"B2:B3\"><x:tableColumns count=\"1\"><x:tableColumn id=\"1\" name=\"Piece\"/></x:tableColumns></x:table>", Table("B2:B3", totals: false))
        .ShouldBe("<x:table ref=\"B2:D3\"><x:tableColumns count=\"3\"><x:tableColumn id=\"1\" name=\"Piece\"/><x:tableColumn id=\"2\" name=\"Metal (g)\"/><x:tableColumn id=\"3\" name=\"&lt;Checks&gt;\"/></x:tableColumns></x:table>");

    [Fact]
    public void Narrow_Table_LosesTheColumnsWithTheirFiltersAndASortThatReachesThem()
    {
        const string Wide = "<table ref=\"A4:E17\" totalsRowCount=\"1\"><autoFilter ref=\"A4:E16\"><filterColumn colId=\"1\"/><filterColumn colId=\"4\"/></autoFilter>"
            + "<sortState ref=\"A5:E16\"><sortCondition ref=\"E5:E16\"/></sortState>"
            + "<tableColumns count=\"5\"><tableColumn id=\"1\" name=\"Piece\"/><tableColumn id=\"9\" name=\"Qty\"/><tableColumn id=\"2\" name=\"Alloy\"/><tableColumn id=\"10\" name=\"Metal (g)\"/><tableColumn id=\"11\" name=\"Checks\"/></tableColumns></table>";

        Encoding.UTF8.GetString(TableEdits.Narrow(Encoding.UTF8.GetBytes(Wide), Table("A4:E17", totals: true), 2)).ShouldBe(
            "<table ref=\"A4:C17\" totalsRowCount=\"1\"><autoFilter ref=\"A4:C16\"><filterColumn colId=\"1\"/></autoFilter>"
            + "<tableColumns count=\"3\"><tableColumn id=\"1\" name=\"Piece\"/><tableColumn id=\"9\" name=\"Qty\"/><tableColumn id=\"2\" name=\"Alloy\"/></tableColumns></table>");
    }

    [Fact]
    public void Narrow_SortOfWhatStays_IsKept()
    {
        const string Sort = "<sortState ref=\"A5:C16\"><sortCondition ref=\"B5:B16\"/></sortState>";

        Encoding.UTF8.GetString(TableEdits.Narrow(Encoding.UTF8.GetBytes($"<table ref=\"A4:E17\">{Sort}</table>"), Table("A4:E17", totals: false), 2))
            .ShouldBe($"<table ref=\"A4:C17\">{Sort}</table>");
    }

    private static string Widen(string xml, SheetTable table) =>
        Encoding.UTF8.GetString(TableEdits.Widen(Encoding.UTF8.GetBytes(xml), table, ["Metal (g)", "<Checks>"]));

    private static SheetTable Table(string range, bool totals) =>
        new("xl/tables/table1.xml", "Table1", CellRange.TryParse(range, out var parsed) ? parsed : default, totals, [], IsPlain: true);
}
