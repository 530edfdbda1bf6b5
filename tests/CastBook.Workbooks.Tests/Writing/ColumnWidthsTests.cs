using System.Text;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class ColumnWidthsTests
{
    private const string Five = "<col min=\"5\" max=\"5\" width=\"10.5\" customWidth=\"1\"/>";
    private const string Seven = "<col min=\"7\" max=\"7\" width=\"24\" customWidth=\"1\"/>";

    private static readonly Dictionary<int, double> Widths = new() { [7] = 24, [5] = 10.5 };

    [Theory]
    [InlineData( // A range that covers the new column is split; its format stays on the rest.
        "<cols><col min=\"1\" max=\"9\" width=\"12\" style=\"3\"/></cols>",
        "<cols><col min=\"1\" max=\"4\" width=\"12\" style=\"3\"/>[5]<col min=\"6\" max=\"6\" width=\"12\" style=\"3\"/>[7]<col min=\"8\" max=\"9\" width=\"12\" style=\"3\"/></cols>")]
    [InlineData( // Beyond the last range.
        "<cols><col min=\"1\" max=\"4\" width=\"12\"/></cols>",
        "<cols><col min=\"1\" max=\"4\" width=\"12\"/>[5][7]</cols>")]
    [InlineData( // Between and exactly on ranges.
        "<cols><col min=\"2\" max=\"2\" width=\"9\"/><col min=\"7\" max=\"7\" width=\"9\"/><col min=\"20\" max=\"16384\" width=\"9\"/></cols>",
        "<cols><col min=\"2\" max=\"2\" width=\"9\"/>[5][7]<col min=\"20\" max=\"16384\" width=\"9\"/></cols>")]
    [InlineData( // At the ends of a range.
        "<cols><col min=\"5\" max=\"7\" width=\"9\"/></cols>",
        "<cols>[5]<col min=\"6\" max=\"6\" width=\"9\"/>[7]</cols>")]
    [InlineData("<cols/>", "<cols>[5][7]</cols>")]
    public void Change_NewColumns_GetTheirWidthAndNoOtherLosesItsOwn(string before, string after)
    {
        var expected = after.Replace("[5]", Five, StringComparison.Ordinal).Replace("[7]", Seven, StringComparison.Ordinal);

        Encoding.UTF8.GetString(ColumnWidths.Change(Encoding.UTF8.GetBytes(before), Widths)).ShouldBe(expected);
    }

    [Fact]
    public void Change_PrefixedElement_KeepsItsPrefix() =>
        Encoding.UTF8.GetString(ColumnWidths.Change("<x:cols><x:col min=\"1\" max=\"4\" width=\"9\"/></x:cols>"u8.ToArray(), new Dictionary<int, double> { [5] = 8 }))
            .ShouldBe("<x:cols><x:col min=\"1\" max=\"4\" width=\"9\"/><x:col min=\"5\" max=\"5\" width=\"8\" customWidth=\"1\"/></x:cols>");

    [Fact]
    public void Whole_SheetWithoutWidths_ListsThemInOrder() => ColumnWidths.Whole(Widths).ShouldBe(
        "<~cols><~col min=\"5\" max=\"5\" width=\"10.5\" customWidth=\"1\"/><~col min=\"7\" max=\"7\" width=\"24\" customWidth=\"1\"/></~cols>");
}
