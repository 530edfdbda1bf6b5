using CastBook.Workbooks.Sharing;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>Words in number formats go; units and signs stay.</summary>
public sealed class NumberFormatTextTests
{
    [Theory]
    [InlineData("General", "General")]
    [InlineData("#,##0.00 \"g\"", "#,##0.00 \"g\"")]
    [InlineData("0.0\" °C\"", "0.0\" °C\"")]
    [InlineData("[$€-407] #,##0.00", "[$€-407] #,##0.00")]
    [InlineData("[h]:mm", "[h]:mm")]
    [InlineData("yyyy-mm-dd hh:mm:ss", "yyyy-mm-dd hh:mm:ss")]
    [InlineData("[Red][<=-1]0.0;0.0_);\\-", "[Red][<=-1]0.0;0.0_);\\-")]
    [InlineData("0 \"for Maria\"", "0 ")]
    [InlineData("\"Maria\"", "General")]
    [InlineData("[$Maria-407]0", "0")]
    [InlineData("\\M\\a\\r\\i\\a 0", " 0")]
    [InlineData("0 \"unclosed Maria", "0 ")]
    public void Clean_Format_HasNobodysWords(string code, string clean) => NumberFormatText.Clean(code).ShouldBe(clean);
}
