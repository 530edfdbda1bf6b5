using System.Globalization;
using CastBook.Planning;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>All lists of a night as read; the ids of their pieces go on from one to the next.</summary>
/// <param name="Lists">The lists.</param>
/// <param name="Findings">What was found.</param>
internal sealed record ListsReading(IReadOnlyList<ListReading> Lists, IReadOnlyList<Finding> Findings)
{
    /// <summary>What the weights are of, where the headings of all lists say the same.</summary>
    public WeightMeaning WeightsAreOf => Lists.All(l => l.WeightsAreOf == Lists[0].WeightsAreOf) ? Lists[0].WeightsAreOf : WeightMeaning.Unknown;

    /// <summary>Whether the headings of all lists say that the gates are in the weights.</summary>
    public bool WeightsHaveGates => Lists.All(l => l.WeightsHaveGates);

    /// <summary>The pieces of all lists; where the headings differ in what the weights are of, each says it for its own.</summary>
    public IReadOnlyList<Piece> Pieces => Lists.Count == 1
        ? Lists[0].Pieces
        : [.. Lists.SelectMany(l => WeightsAreOf == l.WeightsAreOf ? l.Pieces : l.Pieces.Select(p => p with { WeightIsOf = l.WeightsAreOf }))];

    /// <summary>Reads lists; one without rows is left out, and refuses the book where it is the only one.</summary>
    /// <param name="reader">Reads one.</param>
    /// <param name="found">Where they stand.</param>
    /// <param name="marks">What is ours in the book.</param>
    public static ListsReading Read(ListReader reader, FoundLists found, OwnMarks marks)
    {
        var numbers = marks.NumbersFor([.. found.Lists.Select(l => l.Sheet)]);
        var lists = new List<ListReading>();
        var findings = new List<Finding>(found.Findings);
        var where = new List<(FoundList List, ListPlace Place)>();
        foreach (var (list, number) in found.Lists.Zip(numbers))
        {
            var place = new ListPlace(number, lists.Count == 0 ? 0 : lists[^1].Sheet.FirstId + lists[^1].Pieces.Count);
            if (reader.Read(list, place) is { } read)
            {
                lists.Add(read);
                where.Add((list, place));
            }
            else if (found.Lists.Count == 1)
            {
                throw BookRefusedException.For(Catalogue.ListEmpty, Words(list));
            }
            else
            {
                findings.Add(Catalogue.ListEmptyAmongSeveral.At(Subject.Book, Words(list)));
            }
        }

        // A list whose days may be two is read once more by what the others settle.
        var days = lists.Aggregate(DayOrders.None, (all, l) => all | l.Days);
        for (var at = 0; at < lists.Count; at++)
        {
            if (lists[at].Days == DayOrders.None && days != DayOrders.None && lists[at].Findings.Any(f => f.Kind == Catalogue.DayUndecided))
            {
                lists[at] = reader.Read(where[at].List, where[at].Place, days)!;
            }
        }

        return lists.Count > 0
            ? new ListsReading(lists, [.. findings, .. lists.SelectMany(l => l.Findings)])
            : throw BookRefusedException.For(Catalogue.ListEmpty, Words(found.Lists[0]));
    }

    private static string[] Words(FoundList list) => [list.Sheet.Name, list.Headings.Row.ToString(CultureInfo.InvariantCulture)];
}
