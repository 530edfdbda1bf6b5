using CastBook.Planning.Shops;
using CastBook.Workbooks.Clearing;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Settings;
using ClosedXML.Excel;

namespace CastBook.Templates.Tests.Starters;

public sealed class ClearExamplesTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("castbook-clear").FullName;

    private string Book => Path.Combine(folder, "book.xlsx");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(StarterBooksTests.All), MemberType = typeof(StarterBooksTests))]
    public void Clear_NewBook_TakesOutEveryExampleAndNothingElse(StarterKind kind, UnitHabit units)
    {
        var made = SavedBook.Starter(kind, units);
        File.WriteAllBytes(Book, made.Bytes);

        var cleared = Clear();

        cleared.Kept.ShouldBeEmpty();
        var left = new SavedBook(File.ReadAllBytes(Book));
        foreach (var (name, sheet) in made.Sheets)
        {
            foreach (var row in sheet.Descendants(SavedBook.Main + "row").Select(r => (int)r.Attribute("r")!))
            {
                var was = made.Row(name, row);
                left.Row(name, row).ShouldBe(was.Count > 0 && ExampleName.Is(was[0]) ? [.. was.Select(_ => "")] : was, $"{name} {row}");
            }
        }
    }

    [Fact]
    public void Clear_RowsThatAPersonChanged_Stay()
    {
        Make(book =>
        {
            book.Worksheet("Pieces").Cell("B2").SetValue(9);
            book.Worksheet("Pieces").Cell("X3").SetValue("yes");
            book.Worksheet("Pieces").Cell("Z4").SetValue("a word in a column of the shop's own");
            book.Worksheet("Pieces").Cell("B5").FormulaA1 = "1+0";
            book.Worksheet("Pieces").Cell("D6").SetValue("");
            book.Worksheet("Alloys").Cell("G2").SetValue(591);
            book.Worksheet("Materials").Cell("A4").SetValue("our resin");
        });

        var cleared = Clear();

        cleared.Kept.ShouldBe([("Pieces", 4), ("Alloys", 1)]);
        cleared.Cleared.Single(c => c.Sheet == "Pieces").Count.ShouldBe(2);
        var left = new SavedBook(File.ReadAllBytes(Book));
        left.Cell("Pieces", "A2").ShouldBe("Example: band, 5 mm");
        left.Cell("Pieces", "B2").ShouldBe("9");
        left.Cell("Pieces", "A4").ShouldBe("Example: leaf pendant");
        left.Cell("Pieces", "A6").ShouldBe("");
        left.Cell("Alloys", "G2").ShouldBe("591");
        left.Cell("Materials", "A4").ShouldBe("our resin");
    }

    [Fact]
    public void Clear_RowsSortedAndColumnsMoved_StillKnowsThem()
    {
        Make(book =>
        {
            var pieces = book.Worksheet("Pieces");
            var (name, other) = (pieces.Cell("A2").GetString(), pieces.Cell("A3").GetString());
            foreach (var column in "ABCEFGHIJ")
            {
                var (above, below) = (pieces.Cell($"{column}2").Value, pieces.Cell($"{column}3").Value);
                pieces.Cell($"{column}2").Value = below;
                pieces.Cell($"{column}3").Value = above;
            }

            pieces.Cell("A2").GetString().ShouldBe(other);
            pieces.Cell("A3").GetString().ShouldBe(name);
        });

        Clear().Cleared.Single(c => c.Sheet == "Pieces").Count.ShouldBe(6);
    }

    [Fact]
    public void Clear_FilledBook_EmptiesWhatWasWorkedOutToo()
    {
        File.WriteAllBytes(Book, SavedBook.Starter().Bytes);
        BookFile.Fill(Book, null, dryRun: false, BookSettings.None, TimeProvider.System);
        new SavedBook(File.ReadAllBytes(Book)).Row("Pieces", 2).Count(t => t.Length > 0).ShouldBeGreaterThan(10);

        Clear();

        new SavedBook(File.ReadAllBytes(Book)).Row("Pieces", 2).ShouldAllBe(t => t.Length == 0);
    }

    [Fact]
    public void Clear_Twice_ChangesNothingTheSecondTime()
    {
        File.WriteAllBytes(Book, SavedBook.Starter().Bytes);
        Clear();
        var once = File.ReadAllBytes(Book);

        var (cleared, backup) = BookFile.Clear(Book, StarterBooks.ExampleRows, TimeProvider.System);

        cleared.Cleared.ShouldBeEmpty();
        backup.ShouldBeNull();
        File.ReadAllBytes(Book).ShouldBe(once);
    }

    private ClearedRows Clear() => BookFile.Clear(Book, StarterBooks.ExampleRows, TimeProvider.System).Cleared;

    private void Make(Action<XLWorkbook> change)
    {
        using var book = new XLWorkbook(new MemoryStream(SavedBook.Starter().Bytes));
        change(book);
        book.SaveAs(Book);
    }
}
