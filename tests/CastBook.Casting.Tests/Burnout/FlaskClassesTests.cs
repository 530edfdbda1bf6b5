using CastBook.Casting.Burnout;
using CastBook.Casting.Tests.Published;
using UnitsNet;

namespace CastBook.Casting.Tests.Burnout;

public class FlaskClassesTests
{
    public static TheoryData<string, string, string> Inches => PublishedTable.Three("flask-inches.csv");

    [Theory]
    [MemberData(nameof(Inches))]
    public void Of_PublishedSizes_GivesTheirSchedule(string diameter, string height, string expected) =>
        FlaskClasses.Of(Length.FromInches(PublishedNumber.Parse(diameter).Value), Length.FromInches(PublishedNumber.Parse(height).Value))
            .ShouldBe(Enum.Parse<FlaskClass>(expected));

    [Theory]
    [InlineData(65, 65, FlaskClass.Small)]
    [InlineData(65.1, 65, FlaskClass.Medium)]
    [InlineData(65, 65.1, FlaskClass.Medium)]
    [InlineData(90, 105, FlaskClass.Medium)]
    [InlineData(50, 110, FlaskClass.Large)]     // narrow and tall goes by its height
    [InlineData(105, 60, FlaskClass.Large)]     // wide and low goes by its diameter
    [InlineData(105, 205, FlaskClass.Large)]
    [InlineData(105.1, 60, null)]
    [InlineData(60, 205.1, null)]
    public void Of_Limits_BelongToTheSmallerClass(double diameterMm, double heightMm, FlaskClass? expected) =>
        FlaskClasses.Of(Length.FromMillimeters(diameterMm), Length.FromMillimeters(heightMm)).ShouldBe(expected);

    [Fact]
    public void Of_NoSize_Throws() =>
        Should.Throw<ArgumentOutOfRangeException>(() => FlaskClasses.Of(Length.Zero, Length.FromMillimeters(50))).ParamName.ShouldBe("insideDiameter");
}
