using CastBook.Casting.Metals;

namespace CastBook.Casting.Tests.Metals;

public class AlloyKeyTests
{
    [Theory]
    [InlineData("18k yellow", "18KYELLOW")]
    [InlineData("18 ct. Yellow Gold", "18KYELLOW")]
    [InlineData("18-Karat yellow", "18KYELLOW")]
    [InlineData("18 carat", "18K")]
    [InlineData("fine gold", "FINEGOLD")]
    [InlineData("Gun-Metal", "GUNMETAL")]
    [InlineData("CuSn10Zn2", "CUSN10ZN2")]
    [InlineData("", "")]
    [InlineData(" . ", "")]
    public void Of_Name_LeavesWhatNamesTheAlloy(string name, string expected) => AlloyKey.Of(name).ShouldBe(expected);

    [Fact]
    public void Unordered_OtherOrder_IsTheSame()
    {
        AlloyKey.Unordered("yellow gold 18k").ShouldBe(AlloyKey.Unordered("18ct yellow"));
        AlloyKey.Unordered("18k yellow").ShouldNotBe(AlloyKey.Unordered("14k yellow"));
    }
}
