using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Columns;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Writing;

/// <summary>Where each computed column stands in the shop's list: where it was, beside the list, or nowhere.</summary>
internal sealed record ListColumns
{
    /// <summary>The list.</summary>
    public required PieceSheet List { get; init; }

    /// <summary>The columns that stand in the list, with their place.</summary>
    public required (ComputedColumn Column, int At)[] Standing { get; init; }

    /// <summary>Those of them that are new, with the heading they get.</summary>
    public required IReadOnlyList<(ComputedColumn Column, int At, string Heading)> New { get; init; }

    /// <summary>The columns for which there is no room beside the list.</summary>
    public required IReadOnlyList<ComputedColumn> Elsewhere { get; init; }

    /// <summary>What to say about it.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>The column of the Checks cells; null where it does not stand in the list.</summary>
    public int? Checks => Standing.Where(s => s.Column is ChecksColumn).Select(s => (int?)s.At).FirstOrDefault();

    /// <summary>The columns of metal, with the unit in which each is written and what it stood in before.</summary>
    public required IReadOnlyList<StandingUnit> Units { get; init; }

    /// <summary>Decides where the columns stand.</summary>
    /// <param name="list">The shop's list.</param>
    /// <param name="units">The units of the shop.</param>
    /// <param name="choice">Decides in which unit a column is written that stands already.</param>
    public static ListColumns Decide(PieceSheet list, ShopUnits units, UnitChoice choice)
    {
        var all = ComputedColumns.All(units);
        var chosen = all.OfType<MassColumn>().Where(c => list.OwnColumns.ContainsKey(c.OwnName)).Select(c => choice.Of(list, c)).ToList();
        var standing = all.Where(c => list.OwnColumns.ContainsKey(c.OwnName))
            .Select(c => (chosen.FirstOrDefault(s => s.Column.OwnName == c.OwnName)?.Column ?? c, list.OwnColumns[c.OwnName])).ToList();
        var missing = all
            .Where(c => !list.OwnColumns.ContainsKey(c.OwnName) && !list.DeletedOwnColumns.Contains(c.OwnName)).ToList();
        var right = list.LastColumn;
        if (missing.Count == 0 || HasRoom(list, right + missing.Count))
        {
            var taken = HeadingsBut(list, 0);
            var added = missing.Select((c, i) => (c, right + 1 + i, Free(c.Heading, taken))).ToList();
            return new ListColumns
            {
                List = list,
                Standing = [.. standing, .. added.Select(a => (a.c, a.Item2))],
                New = added,
                Elsewhere = [],
                Units = chosen,
                Findings = [.. chosen.SelectMany(c => c.Findings)],
            };
        }

        return new ListColumns
        {
            List = list,
            Standing = [.. standing],
            New = [],
            Elsewhere = missing,
            Units = chosen,
            Findings = [Catalogue.ColumnsNoRoom.At(Subject.Book, list.Sheet.Name), .. chosen.SelectMany(c => c.Findings)],
        };
    }

    /// <summary>The units that the list's columns stand in.</summary>
    /// <param name="record">What CastBook wrote last.</param>
    public MetalUnits UnitsIn(FillRecord record) => new(List, record, WrittenMass.Gram);

    /// <summary>The heading of a column in its unit; two columns of a list never share one.</summary>
    /// <param name="standing">A column that stands already.</param>
    public string HeadingOf(StandingUnit standing)
    {
        var at = List.OwnColumns[standing.Column.OwnName];
        var now = List.Grid.Cell(List.HeadingRow, at).Text?.Trim() ?? "";
        return now.StartsWith(standing.Column.Heading, StringComparison.Ordinal) ? now : Free(standing.Column.Heading, HeadingsBut(List, at));
    }

    private static HashSet<string> HeadingsBut(PieceSheet list, int at) => Enumerable.Range(list.FirstColumn, list.LastColumn - list.FirstColumn + 1)
        .Where(column => column != at)
        .Select(column => list.Grid.Cell(list.HeadingRow, column).Text?.Trim() ?? "")
        .ToHashSet(StringComparer.OrdinalIgnoreCase);

    private static bool HasRoom(PieceSheet list, int last) =>
        last <= CellRef.MaxColumn
        && (list.OccupiedFrom is not { } occupied || occupied > last)
        && !list.Grid.Arrays.Any(a => a.FirstColumn <= last && a.LastColumn > list.LastColumn && a.FirstRow <= list.LastRow && a.LastRow >= list.HeadingRow)
        && list.Table is null or { IsPlain: true };

    private static string Free(string heading, HashSet<string> taken)
    {
        var name = heading;
        for (var number = 1; !taken.Add(name); number++)
        {
            name = number == 1 ? $"{heading} (CastBook)" : $"{heading} (CastBook {number})";
        }

        return name;
    }
}
