using System.Globalization;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>A sheet of the shop's: our columns on the list, lines we ask in on the Shop sheet, marks, and a drawing for notes.</summary>
/// <param name="ours">Our columns on the sheet.</param>
/// <param name="known">Those of them that were ours before already: what stands in their cells is ours.</param>
/// <param name="takesLines">Whether lines may be added below what the shop wrote.</param>
internal sealed class SheetRule(IReadOnlySet<int> ours, IReadOnlySet<int> known, bool takesLines) : PartRule
{
    private readonly CellPlaces was = new();
    private readonly CellPlaces now = new();

    public override IReadOnlyList<string>? Compare(RawNode before, RawNode after)
    {
        if (before.LocalName == "sheetData")
        {
            was.Add(before);
            now.Add(after);
            return LostOfOurs() is { Count: > 0 } lost ? lost : null;
        }

        return before.LocalName == "cols" ? CompareWidths(before, after) : null;
    }

    public override bool IsOurs(RawNode parentBefore, RawNode parent, RawNode child) => (parent.LocalName, child.LocalName) switch
    {
        ("worksheet", "conditionalFormatting") => child.Elements.Any() && child.Elements.All(IsOurRule),
        ("conditionalFormatting", "cfRule") => IsOurRule(child),
        ("worksheet", "cols" or "legacyDrawing") => parentBefore.Element(child.LocalName) is null,
        ("sheetData", "row") => takesLines && !was.HasRow(PlacesOf(parentBefore, parent).RowOf(child)),
        ("row", "c") => IsOurCell(parentBefore, parent, child),
        _ => false,
    };

    public override bool MayChange(RawNode element, string attribute, string? before, string? after) => (element.LocalName, attribute) switch
    {
        ("row", "spans") => IsWidenedSpan(before, after),
        ("dimension" or "autoFilter", "ref") => ours.Count > 0 && IsWidened(before, after),
        _ => false,
    };

    private static bool IsOurRule(RawNode rule) =>
        rule.Element("formula")?.InnerText.Replace("&quot;", "\"", StringComparison.Ordinal).Contains("N(\"castbook:", StringComparison.Ordinal) == true;

    private static bool IsWidenedSpan(string? before, string? after)
    {
        var (was, now) = (before?.Split(':'), after?.Split(':'));
        return was is [var first, var last] && now is [var newFirst, var newLast] && first == newFirst
            && int.Parse(newLast, CultureInfo.InvariantCulture) >= int.Parse(last, CultureInfo.InvariantCulture);
    }

    /// <summary>The shop's are compared with what they were; ours are what they are, but for <see cref="LostOfOurs"/>.</summary>
    private bool IsOurCell(RawNode parentBefore, RawNode parent, RawNode child)
    {
        var place = PlacesOf(parentBefore, parent).Of(child);
        return ours.Contains(place.Column) || (takesLines && !was.At.ContainsKey(place));
    }

    private CellPlaces PlacesOf(RawNode parentBefore, RawNode parent) => parent == parentBefore ? was : now;

    /// <summary>Cells in our columns: what the shop had there when they became ours, formulas at any time, and the format.</summary>
    private List<string> LostOfOurs()
    {
        var lost = new List<string>();
        foreach (var (place, cell) in was.At.Where(c => ours.Contains(c.Key.Column)))
        {
            var address = CellRef.AddressOf(place.Row, place.Column);
            if (!now.At.TryGetValue(place, out var after))
            {
                lost.Add($"cell {address} is gone");
            }
            else if (cell.InnerText != after.InnerText && (cell.Element("f") is not null || (cell.InnerText.Length > 0 && !known.Contains(place.Column))))
            {
                lost.Add($"cell {address} held \"{cell.InnerText}\", holds \"{after.InnerText}\"");
            }
            else if (after["s"] != cell["s"])
            {
                lost.Add($"cell {address} had the format {cell["s"]}, has {after["s"]}");
            }
        }

        return lost;
    }

    /// <summary>A range of columns may be split where ours lie in it: each of the shop's columns keeps all its attributes.</summary>
    private List<string> CompareWidths(RawNode before, RawNode after)
    {
        var (was, now) = (Widths(before), Widths(after));
        return [.. was.Where(w => !ours.Contains(w.Key) && now.GetValueOrDefault(w.Key) != w.Value).Select(w => $"column {w.Key} was {w.Value}, is {now.GetValueOrDefault(w.Key)}"),
            .. now.Keys.Where(c => !ours.Contains(c) && !was.ContainsKey(c)).Select(c => $"column {c} got a width")];
    }

    private static SortedDictionary<int, string> Widths(RawNode cols)
    {
        var widths = new SortedDictionary<int, string>();
        foreach (var col in cols.Elements)
        {
            var attributes = string.Concat(col.Attributes.Where(a => a.Name is not ("min" or "max")).Select(a => a.Raw));
            for (var c = int.Parse(col["min"]!, CultureInfo.InvariantCulture); c <= int.Parse(col["max"]!, CultureInfo.InvariantCulture); c++)
            {
                widths.Add(c, attributes);
            }
        }

        return widths;
    }
}
