using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Writing;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class MarkRulesTests
{
    private const string Theirs = "<cfRule type=\"cellIs\" dxfId=\"1\" priority=\"3\" operator=\"lessThan\"><formula>0</formula></cfRule>";
    private const string Ours = "<cfRule type=\"expression\" dxfId=\"2\" priority=\"4\"><formula>N(\"castbook:stop\")=0</formula></cfRule>";

    [Theory]
    [InlineData(Theirs, Theirs)]
    [InlineData(Theirs + Ours, Theirs)]
    [InlineData(Ours + Theirs + Ours, Theirs)]
    [InlineData(Ours, null)]
    [InlineData(Ours + Ours, null)]
    public void WithoutOurs_Block_KeepsTheShopsRulesOnly(string rules, string? left)
    {
        var without = MarkRules.WithoutOurs(Block(rules));

        (without is null ? null : Encoding.UTF8.GetString(without)).ShouldBe(left is null ? null : Encoding.UTF8.GetString(Block(left)));
    }

    [Fact]
    public void WithoutOurs_WhatWeWrite_IsRemoved()
    {
        foreach (var severity in Enum.GetValues<Severity>())
        {
            MarkRules.WithoutOurs(Bytes(MarkRules.Always("A1 B2", severity, 0, 1))).ShouldBeNull();
            MarkRules.WithoutOurs(Bytes(MarkRules.WhereChecksSay(new CellRange(2, 3, 9, 3), 11, "stop: weight", severity, 0, 1))).ShouldBeNull();
        }
    }

    [Fact]
    public void WhereChecksSay_Column_IsAnchoredToTheChecksOfTheSameRow() => MarkRules
        .WhereChecksSay(new CellRange(2, 3, 9, 3), 11, "stop: weight", Severity.Stop, format: 5, priority: 7)
        .ShouldBe("<~conditionalFormatting sqref=\"C2:C9\"><~cfRule type=\"expression\" dxfId=\"5\" priority=\"7\">"
            + "<~formula>(N(\"castbook:stop\")=0)*ISNUMBER(SEARCH(\"stop: weight\",$K2))</~formula></~cfRule></~conditionalFormatting>");

    private static byte[] Block(string rules) => Encoding.UTF8.GetBytes($"<conditionalFormatting sqref=\"A1:A9\">{rules}</conditionalFormatting>");

    private static byte[] Bytes(string own) => Encoding.UTF8.GetBytes(XmlPart.WithPrefix(own, ""));
}
