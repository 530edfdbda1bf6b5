using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Tests.Filling;
using CastBook.Workbooks.Tests.Reading;

namespace CastBook.Workbooks.Tests.Fidelity.RandomBooks;

/// <summary>Any book at all: nothing is lost, no validator finds anything new, and filling again changes no part.</summary>
public sealed class RandomBookTests
{
    private const int Count = 60;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, Count)];

    [Fact]
    public void Make_SameSeed_MakesTheSameBook() => RandomBook.Make(7).ShouldBe(RandomBook.Make(7));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Fill_RandomBook_LosesNothingAndStaysWhenFilledAgain(int seed)
    {
        var book = RandomBook.Make(seed);

        var once = Filled.From(book);
        BookDiff.Of(book, once.Bytes).Losses.ShouldBeEmpty();
        Validator.NewMessages(book, once.Bytes).ShouldBeEmpty();

        var twice = once.Again();
        Parts.Of(twice.Bytes).ShouldBe(Parts.Of(once.Bytes));
        twice.Result.Changed.ShouldBeFalse();
    }

    /// <summary>Somebody types into cells of the list, ours and the shop's own, and the book is filled again.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Fill_RandomCellsTyped_LosesNothing(int seed)
    {
        var random = new Random(seed);
        var once = Filled.From(RandomBook.Make(seed));
        var list = TestBooks.Read(new MemoryStream(once.Bytes)).Lists[0];
        var typed = Typed.Into(once.Bytes, [.. Enumerable.Range(0, 6).Select(_ => (
            list.Sheet.Name,
            CellRef.AddressOf(random.Next(list.HeadingRow + 1, list.LastRow + 1), random.Next(list.FirstColumn, list.LastColumn + 1)),
            random.Next(3) switch { 0 => "tall one", 1 => null, _ => (object)random.Next(40) }))]);

        var again = Filled.From(typed);

        BookDiff.Of(typed, again.Bytes).Losses.ShouldBeEmpty();
        Validator.NewMessages(typed, again.Bytes).ShouldBeEmpty();
        again.Again().Result.Changed.ShouldBeFalse();
    }

    // Random books are worth something only while they have what they are made to try.
    [Fact]
    public void Make_AllSeeds_TryEverything()
    {
        var tried = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var seed in Enumerable.Range(1, Count))
        {
            var book = RandomBook.Make(seed);
            var filled = Filled.From(book);
            foreach (var what in Features.Of(book, filled))
            {
                tried[what] = tried.GetValueOrDefault(what) + 1;
            }
        }

        tried.Where(t => t.Value < 3).ShouldBeEmpty();
        tried.Keys.ShouldBe(Features.All, ignoreOrder: true);
    }
}
