using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Tests.Reading.Grid;

public sealed class NumberFormatsTests
{
    [Theory]
    [InlineData("yyyy-mm-dd", true, false)]
    [InlineData("[h]:mm", true, false)]
    [InlineData("0.00 \"days\"", false, false)]
    [InlineData("[Red]0.00\\ \\d", false, false)]
    [InlineData("0.0 %", false, true)]
    [InlineData("General", false, false)]
    [InlineData("0.00\" %\"", false, false)]
    public void Read_FormatCode_TellsDatesAndPercentages(string code, bool date, bool percent)
    {
        var formats = Read($"<numFmts><numFmt numFmtId=\"164\" formatCode=\"{System.Security.SecurityElement.Escape(code)}\"/></numFmts>"
            + "<cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/></cellXfs>");

        (formats.IsDate(1), formats.IsPercent(1)).ShouldBe((date, percent));
        (formats.IsDate(0), formats.IsPercent(0)).ShouldBe((false, false));
    }

    [Theory]
    [InlineData("yyyy-mm-dd hh:mm", true)]
    [InlineData("[h]:mm", true)]
    [InlineData("d mmm yy", false)]
    [InlineData("0 \"hours\"", false)]
    public void Read_FormatCode_TellsHours(string code, bool hour)
    {
        var formats = Read($"<numFmts><numFmt numFmtId=\"164\" formatCode=\"{System.Security.SecurityElement.Escape(code)}\"/></numFmts><cellXfs><xf numFmtId=\"164\"/><xf numFmtId=\"14\"/><xf numFmtId=\"22\"/></cellXfs>");

        (formats.ShowsHour(0), formats.ShowsHour(1), formats.ShowsHour(2)).ShouldBe((hour, false, true));
    }

    [Theory]
    [InlineData("m/d/yyyy", DayOrders.MonthFirst)]
    [InlineData("[$-409]m/d/yy h:mm AM/PM;@", DayOrders.MonthFirst)]
    [InlineData("dd.mm.yyyy", DayOrders.DayFirst)]
    [InlineData("d mmm yyyy", DayOrders.None)]
    [InlineData("yyyy-mm-dd", DayOrders.None)]
    [InlineData("mm:ss", DayOrders.None)]
    public void Read_FormatCodeThatCellsHave_TellsTheOrderOfDays(string code, object order)
    {
        var format = $"<numFmts><numFmt numFmtId=\"164\" formatCode=\"{System.Security.SecurityElement.Escape(code)}\"/></numFmts>";

        Read(format + "<cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"164\"/></cellXfs>").Days.ShouldBe((DayOrders)order);
        Read(format + "<cellXfs><xf numFmtId=\"0\"/></cellXfs>").Days.ShouldBe(DayOrders.None);
    }

    [Fact]
    public void Read_BuiltInFormats_AreKnown()
    {
        var formats = Read("<cellXfs><xf numFmtId=\"14\"/><xf numFmtId=\"10\"/><xf numFmtId=\"2\"/></cellXfs>");

        (formats.IsDate(0), formats.IsPercent(1), formats.IsDate(2), formats.IsDate(99)).ShouldBe((true, true, false, false));
    }

    private static NumberFormats Read(string content)
    {
        using var book = new BookBuilder().Sheet("S", _ => { })
            .Part("xl/styles.xml", $"<styleSheet xmlns=\"{BookBuilder.MainNamespace}\">{content}</styleSheet>").Build();
        using var package = BookPackage.Open(book);
        return NumberFormats.Read(package);
    }
}
