using CastBook.Planning;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Sheets;
using UnitsNet;

namespace CastBook.Workbooks.Tests.Reports;

public sealed class MetalWordsTests
{
    [Theory]
    [InlineData(394.6, 395.4, null, "pieces 395 g")]
    [InlineData(394.6, 396.2, null, "pieces 395 to 396 g")]
    [InlineData(394.6, 395.4, 25.8, "pieces 395 g if the weights are of patterns, 25.8 g if of finished metal")]
    public void Pieces_ASpan_IsOneNumberWhereItsEndsReadAlike(double least, double most, double? finished, string said)
    {
        var metal = new MetalPlan
        {
            Alloy = "sterling",
            PiecesLeast = Mass.FromGrams(least),
            PiecesMost = Mass.FromGrams(most),
            PiecesIfFinished = finished is { } grams ? Mass.FromGrams(grams) : null,
        };

        MetalWords.Pieces(metal, WrittenMass.Gram).ShouldBe(said);
    }
}
