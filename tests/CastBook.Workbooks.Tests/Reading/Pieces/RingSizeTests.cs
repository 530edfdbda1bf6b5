using CastBook.Planning.Findings;

namespace CastBook.Workbooks.Tests.Reading.Pieces;

/// <summary>The size of a ring is no size of the piece, whatever the column is called.</summary>
public sealed class RingSizeTests
{
    // By letters, by circumference, by numbers, by the inside in mm.
    private static readonly object[] RingSizes = ["N ½", "54", 54, "US 7", "7 1/2", "T-U", 17.2, "17.2 mm"];

    [Theory]
    [InlineData("Size")]
    [InlineData("Size (mm)")]
    [InlineData("Größe")]
    [InlineData("Größe (Ring)")]
    [InlineData("Taille")]
    [InlineData("Talla")]
    [InlineData("Misura")]
    [InlineData("Taglia")]
    [InlineData("Tamanho")]
    public void Read_RingSizesUnderSize_AreLeftAloneAndSaid(string heading)
    {
        using var book = BookBuilder.Pieces([["Piece", "Qty", "Pattern weight (g)", "Alloy", heading], .. RingSizes.Select((size, i) => new[] { $"Band {i}", 1, 1.5, "Bronze", size })]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces.Count.ShouldBe(RingSizes.Length);
        reading.Night.Pieces.ShouldAllBe(p => p.Box == null && p.Unreadable.Count == 0);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldBe($"\"N ½\" under \"{heading}\" was taken as the size of a ring and left alone, as is all that stands there alone.");
    }

    // Beside the width of the band, a ring's inside read as its length would hang too much on a tree.
    [Theory]
    [InlineData("Ring size")]
    [InlineData("Finger size")]
    [InlineData("Ring Ø (mm)")]
    [InlineData("Inside diameter (mm)")]
    [InlineData("Inner Ø")]
    [InlineData("Diameter (inside)")]
    [InlineData("Ø (inner, mm)")]
    [InlineData("Diameter (stone)")]
    [InlineData("Ringgröße")]
    [InlineData("Ringweite")]
    [InlineData("Innendurchmesser (mm)")]
    [InlineData("Durchmesser innen (mm)")]
    [InlineData("Durchmesser (innen)")]
    [InlineData("Ø innen")]
    [InlineData("Taille de doigt")]
    [InlineData("Tour de doigt")]
    [InlineData("Taille bague")]
    [InlineData("Diamètre intérieur (mm)")]
    [InlineData("Diamètre (intérieur)")]
    [InlineData("Talla de anillo")]
    [InlineData("Medida del anillo")]
    [InlineData("Diámetro interior (mm)")]
    [InlineData("Diámetro (interior)")]
    [InlineData("Misura anello")]
    [InlineData("Taglia dell'anello")]
    [InlineData("Diametro interno (mm)")]
    [InlineData("Diametro (interno)")]
    [InlineData("Tamanho do anel")]
    [InlineData("Aro")]
    [InlineData("Diâmetro interno (mm)")]
    [InlineData("Diâmetro (interno)")]
    public void Read_RingSizeUnderAHeadingOfItsOwn_IsNoLength(string heading)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", heading, "Width (mm)"], ["Band", 1, 1.5, "Bronze", 17.2, 5]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces[0].Box.ShouldBeNull();
        reading.Lists[0].Columns.Keys.ShouldNotContain(PieceField.Length);
        reading.Findings.ShouldBeEmpty();
    }

    // Two rings of size 54 would be taken for 2 mm by 54 mm, and hung so.
    [Theory]
    [InlineData("Size", "2x54", "54", "2")]
    [InlineData("Größe", "2 × 54", "54", "2")]
    [InlineData("Taille", "3 x 52,5", "52.5", "3")]
    [InlineData("Talla", "1x60", "60", "1")]
    public void Read_TwoNumbersThatMayBeRings_AreAskedAbout(string heading, string size, string ring, string count)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", heading], ["Band", 2, 1.5, "Bronze", size]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces[0].Box.ShouldBeNull();
        reading.Night.Pieces[0].Unreadable.ShouldBe([PieceField.Sizes]);
        var asked = reading.Findings.ShouldHaveSingleItem();
        asked.Seen.ShouldBe($"\"{size}\" may be the size of a ring, {ring}, and how many, {count}; or the sizes of the piece.");
        asked.Remedy.ShouldBe($"For rings type how many under the quantity and the size alone; for the sizes of the piece type their unit too, such as {size} mm.");
    }

    // Beside ring sizes that stand alone, small numbers may be rings too: two of size 7, as American shops number them.
    [Theory]
    [InlineData("7", "2x7", true)]
    [InlineData("N ½", "2x6 1/2", true)]
    [InlineData("12x7", "2x7", false)]
    [InlineData("N", "20x10", false)]
    [InlineData("54", "2x54 mm", false)]
    [InlineData("54", "2x54x1", false)]
    public void Read_TwoSmallNumbers_AreAskedAboutBesideSizesAlone(string other, string size, bool asked)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", "Size"], ["Band", 1, 1.5, "Bronze", other], ["Stud", 1, 1.5, "Bronze", size]);

        var reading = TestBooks.Read(book);

        (reading.Night.Pieces[1].Box is null).ShouldBe(asked);
        reading.Findings.Any(f => f.Id == "sizes-or-ring-sizes").ShouldBe(asked);
    }

    [Theory]
    [InlineData("Dimensions")]
    [InlineData("Size (mm)")]
    [InlineData("Maße")]
    public void Read_TwoNumbersUnderAHeadingThatMeasures_AreSizes(string heading)
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", heading], ["Bar", 1, 1.5, "Bronze", "2x54"]);

        TestBooks.Read(book).Night.Pieces[0].Box!.Value.Width.Millimeters.ShouldBe(54);
    }

    [Fact]
    public void Read_SizesAmongRingSizes_AreTakenWhereTheyStand()
    {
        using var book = BookBuilder.Pieces(
            ["Piece", "Qty", "Pattern weight (g)", "Alloy", "Size"], ["Pendant", 1, 1.5, "Bronze", "20 × 10 × 3 mm"], ["Band", 1, 1.5, "Bronze", "N"], ["Signet", 1, 1.5, "Bronze", "P"]);

        var reading = TestBooks.Read(book);

        reading.Night.Pieces.Select(p => p.Box?.Length.Millimeters).ShouldBe([20, null, null]);
        reading.Findings.ShouldHaveSingleItem().Seen.ShouldStartWith("\"N\" under \"Size\" was taken as the size of a ring");
    }

    [Fact]
    public void Read_RingSizeOfARowThatIsDone_IsNobodysConcern()
    {
        using var book = BookBuilder.Pieces(["Piece", "Qty", "Pattern weight (g)", "Alloy", "Size", "Done"], ["Band", 1, 1.5, "Bronze", "N", "yes"], ["Pin", 1, 1.5, "Bronze", null, null]);

        TestBooks.Read(book).Findings.ShouldNotContain(f => f.Id == "size-left-alone");
    }
}
