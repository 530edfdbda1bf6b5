using System.Globalization;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Grid;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Tests.Writing;

public sealed class FillRecordTests
{
    private const int Column = 9;

    [Theory]
    [InlineData(3)]
    [InlineData(6_000)]
    [InlineData(13_000)]
    public void Read_WhatWasWritten_KnowsEveryValueAndNoOther(int values)
    {
        var record = new FillRecord();
        for (var i = 0; i < values; i++)
        {
            record.Add(OwnName.MetalEach, Text(i));
        }

        record.Add(OwnName.Checks, "");
        Cells(record).Count.ShouldBe(2 + ((values - 1) / 6_000));
        var read = RoundTrip(record);

        for (var i = 0; i < values; i++)
        {
            read.Wrote(OwnName.MetalEach, Text(i)).ShouldBeTrue();
        }

        read.Knows(OwnName.Checks).ShouldBeTrue();
        read.Knows(OwnName.Flask).ShouldBeFalse();
        read.Wrote(OwnName.Checks, Text(0)).ShouldBeFalse();
        // 32 bits a value, so that two of 1,000 others may be taken for ours by chance, and no more.
        Enumerable.Range(values, 1_000).Count(i => read.Wrote(OwnName.MetalEach, Text(i))).ShouldBeLessThan(3);
    }

    [Fact]
    public void Wrote_ColumnOfAnotherList_KnowsItsValuesToo()
    {
        var record = new FillRecord();
        record.Add(OwnName.InList(OwnName.Flask, 2), "A ×6");
        var read = RoundTrip(record);

        read.Wrote(OwnName.Flask, "A ×6").ShouldBeTrue();
        read.Wrote(OwnName.InList(OwnName.Flask, 3), "A ×6").ShouldBeTrue();
        read.Knows(OwnName.Flask).ShouldBeTrue();
        read.Wrote(OwnName.Flask, "B").ShouldBeFalse();
        read.Wrote(OwnName.Metal, "A ×6").ShouldBeFalse();
    }

    [Fact]
    public void CarryOver_ListsThatAreNotRead_AreKeptAndNoOthers()
    {
        var before = new FillRecord();
        before.Add(OwnName.Flask, "A");
        before.Add(OwnName.InList(OwnName.Flask, 2), "B");
        var after = new FillRecord();

        after.CarryOver(before, [OwnName.InList(OwnName.Flask, 2)]);

        (after.Wrote(OwnName.Flask, "A"), after.Wrote(OwnName.Flask, "B")).ShouldBe((false, true));
    }

    [Theory]
    [InlineData("CastBook_MetalEach", 1, "CastBook_MetalEach")]
    [InlineData("CastBook_MetalEach", 12, "CastBook_MetalEach_12")]
    public void InList_NumberOfAList_IsSplitOffAgain(string name, int list, string inList)
    {
        OwnName.InList(name, list).ShouldBe(inList);
        OwnName.Split(inList).ShouldBe((name, list));
    }

    [Fact]
    public void Write_SameValuesInAnotherOrder_GivesTheSameCells()
    {
        var one = new FillRecord();
        var other = new FillRecord();
        foreach (var i in Enumerable.Range(0, 50))
        {
            one.Add(OwnName.Metal, Text(i));
            one.Add(OwnName.Flask, Text(i + 7));
            other.Add(OwnName.Flask, Text(56 - i));
            other.Add(OwnName.Metal, Text(49 - i));
        }

        Cells(one).ShouldBe(Cells(other));
    }

    [Fact]
    public void Wrote_LineEndsAndLastDigitsThatProgramsChange_AreOne()
    {
        var record = new FillRecord();
        record.Add("k", "a\nb");
        record.Add("k", FillRecord.TextOf(CellValue.Of(45.300000000000004)));

        record.Wrote("k", "a\r\nb").ShouldBeTrue();
        record.Wrote("k", FillRecord.TextOf(new GridCell(CellKind.Number, 45.3, null, 0, false))).ShouldBeTrue();
        record.Wrote("k", FillRecord.TextOf(CellValue.Of(45.301))).ShouldBeFalse();
        record.Wrote("other", "a\nb").ShouldBeFalse();
    }

    // Short numbers are written down by a quicker way than they are looked up by.
    [Fact]
    public void Wrote_AnyNumberThatWasAdded_IsKnown()
    {
        var random = new Random(7);
        double[] odd = [0, -0.0, 0.001, -0.001, 1, -7, 100.5, 99_999.999, -99_999.999, 100_000, 100_000.125, 123_456.789, 1e9, 1e-5, 2.5e-7, 1e300];
        double[] some = [.. Enumerable.Range(0, 5_000).Select(i => Math.Round((random.NextDouble() - 0.3) * Math.Pow(10, i % 9), i % 6))];
        foreach (var number in odd.Concat(some).Concat(some.Select(Math.BitIncrement)))
        {
            var record = new FillRecord();
            record.Add("k", CellValue.Of(number));

            record.Wrote("k", new GridCell(CellKind.Number, number, null, 0, false)).ShouldBeTrue(number.ToString(CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void Read_BookWithoutChecksOrWithOtherText_KnowsNothing()
    {
        FillRecord.Read(null, Column).Knows(OwnName.Metal).ShouldBeFalse();
        using var book = BookBuilder.Pieces(["castbook-record CastBook_Metal !!!"], ["castbook-record"], ["something else"]);
        using var package = BookPackage.Open(book);
        FillRecord.Read(SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package)), 1).Knows(OwnName.Metal).ShouldBeFalse();
    }

    private static string Text(int number) => $"Piece {number.ToString(CultureInfo.InvariantCulture)}";

    private static FillRecord RoundTrip(FillRecord record)
    {
        var cells = Cells(record);
        using var book = new BookBuilder().Sheet("Checks", s => cells.ForEach(c => s.Row(null, null, null, null, null, null, null, null, c))).Build();
        using var package = BookPackage.Open(book);
        return FillRecord.Read(SheetReader.Read(package, package.Sheets[0], SharedStrings.Read(package)), Column);
    }

    private static List<string> Cells(FillRecord record)
    {
        var sheet = new OwnedSheet("Checks");
        record.Write(sheet, Column);
        var cells = sheet.Rows.Values.Select(row => row[Column].Value.Text!).ToList();
        // No cell holds more characters.
        cells.ShouldAllBe(c => c.Length <= 32_767);
        return cells;
    }
}
