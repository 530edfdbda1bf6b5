namespace CastBook.Workbooks.Tests.Reading.Headings;

/// <summary>Sizes in one cell stand in the order that their heading names.</summary>
public sealed class SizeOrderTests
{
    // A piece 24 mm from the gate outwards, 9 mm wide and 3 mm thick.
    [Theory]
    [InlineData("L x W x H (mm)", "24 x 9 x 3")]
    [InlineData("W x L x H (mm)", "9 x 24 x 3")]
    [InlineData("W×L×H (mm)", "9 × 24 × 3")]
    [InlineData("H x L x W (mm)", "3 x 24 x 9")]
    [InlineData("H x W x D (mm)", "24 x 9 x 3")]
    [InlineData("W x D x H (mm)", "9 x 3 x 24")]
    [InlineData("Dimensions (W x L x H)", "9 x 24 x 3")]
    [InlineData("Width x Length x Thickness", "9 x 24 x 3")]
    [InlineData("B x L x H (mm)", "9 x 24 x 3")]
    [InlineData("H x B x T", "24 x 9 x 3")]
    [InlineData("Dimensions (mm)", "24 x 9 x 3")]
    public void Read_Sizes_AreTakenInTheOrderOfTheirHeading(string heading, string sizes)
    {
        var box = Box(heading, sizes);

        (box.Length.Millimeters, box.Width.Millimeters, box.Thickness?.Millimeters).ShouldBe((24, 9, 3));
    }

    [Theory]
    [InlineData("W x L (mm)", "9 x 24")]
    [InlineData("W x L x H (mm)", "9 x 24")]
    [InlineData("W x H (mm)", "9 x 24")]
    public void Read_TwoSizes_AreTakenInTheOrderOfTheirHeading(string heading, string sizes)
    {
        var box = Box(heading, sizes);

        (box.Length.Millimeters, box.Width.Millimeters, box.Thickness).ShouldBe((24, 9, null));
    }

    private static CastBook.Planning.PieceBox Box(string heading, string sizes) =>
        TestBooks.Read(BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", heading], ["Pin", 1, 1.5, "Bronze", sizes]))
            .Night.Pieces.ShouldHaveSingleItem().Box!.Value;
}
