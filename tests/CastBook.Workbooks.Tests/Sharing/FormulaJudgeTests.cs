using CastBook.Workbooks.Sharing;

namespace CastBook.Workbooks.Tests.Sharing;

/// <summary>Which formulas say nothing of anybody.</summary>
public sealed class FormulaJudgeTests
{
    private static readonly FormulaJudge Judge = new(
        new HashSet<string> { "Pieces", "Our shop" },
        new HashSet<string> { "Weights" },
        new Dictionary<string, IReadOnlySet<string>> { ["Jobs"] = new HashSet<string> { "Qty", "Weight (g)" } });

    [Theory]
    [InlineData("B5*C5")]
    [InlineData("SUM($C$5:$C$99)/1000")]
    [InlineData("IF(A5=\"\",\"\",ROUND(Pieces!B5*Weights,2))")]
    [InlineData("VLOOKUP(A5,'Our shop'!$A:$C,3,FALSE)")]
    [InlineData("SUBTOTAL(109,Jobs[Weight (g)])")]
    [InlineData("Jobs[[#This Row],[Qty]]*Jobs[[#This Row],[Weight (g)]]")]
    [InlineData("_xlfn.XLOOKUP(A5,Pieces!$A$5:$A$9,Pieces!$B$5:$B$9)")]
    [InlineData("OFFSET(Pieces!$A$2,0,0,MAX(1,COUNTA(Pieces!$A$2:$A$200)),1)")]
    public void IsFree_CellsFunctionsAndSharedNames_IsTrue(string formula) => Judge.IsFree(formula).ShouldBeTrue();

    [Theory]
    [InlineData("")]
    [InlineData("A5&\" for Maria\"")]
    [InlineData("A5&\"\"\"Maria\"\"\"")]
    [InlineData("C5*31.5")]
    [InlineData("C5*45")]
    [InlineData("Prices!A1")]
    [InlineData("'Maria''s prices'!A1")]
    [InlineData("[1]Pieces!A1")]
    [InlineData("'C:\\Maria\\[book.xlsx]Pieces'!A1")]
    [InlineData("MariaPrice*2")]
    [InlineData("MARIA(A5)")]
    [InlineData("Other[Qty]")]
    [InlineData("Jobs[Maria]")]
    [InlineData("Jobs[[#This Row],[Maria]]")]
    [InlineData("Jobs[[Qty]Maria]")]
    [InlineData("Pieces!Maria")]
    [InlineData("#REF!")]
    [InlineData("cmd|'/c maria'!A0")]
    public void IsFree_AnybodysWordsOrNumbers_IsFalse(string formula) => Judge.IsFree(formula).ShouldBeFalse();

    [Fact]
    public void IsFree_LimitOfAnEntry_MayBeAnyNumber()
    {
        Judge.IsFree("-12.5", anyNumber: true).ShouldBeTrue();
        Judge.IsFree("-12.5").ShouldBeFalse();
    }
}
