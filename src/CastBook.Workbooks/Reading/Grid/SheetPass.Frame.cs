using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Reading.Grid;

/// <content>What stands around the cells.</content>
internal sealed partial class SheetPass
{
    private void TakeFrame()
    {
        var priorityBefore = 0;
        var from = 0L;
        for (var depth = Take(0, ref from, ref priorityBefore); depth > 0;)
        {
            scanner.NextInside();
            depth = Take(depth, ref from, ref priorityBefore);
        }
    }

    private int Take(int depth, ref long from, ref int priorityBefore)
    {
        if (scanner.Kind != TagKind.End)
        {
            from = scanner.End;
            TakeFrameTag(depth, ref priorityBefore);
        }
        else if (scanner.LocalName.SequenceEqual("formula"u8) && scanner.TextSince(from).IndexOf("castbook:"u8) >= 0)
        {
            // A rule of ours: it is taken out and made anew, so it does not count.
            Frame.HighestPriority = priorityBefore;
        }

        return scanner.DepthAfter(depth);
    }

    private void TakeFrameTag(int depth, ref int priorityBefore)
    {
        var name = scanner.LocalName;
        var tag = scanner.Tag;
        if (name.SequenceEqual("mergeCell"u8) && TryRange(tag, out var merge))
        {
            Frame.Merges.Add(merge);
        }
        else if (depth == 0 && name.SequenceEqual("autoFilter"u8) && TryRange(tag, out var filter))
        {
            Frame.AutoFilter = filter;
        }
        else if (name.SequenceEqual("tablePart"u8) && TagAttributes.TryGetPrefixed(tag, "id"u8, out var table))
        {
            Frame.TablePartIds.Add(Encoding.UTF8.GetString(table));
        }
        else if (name.SequenceEqual("cfRule"u8) && TagAttributes.Number(tag, "priority"u8) is { } priority)
        {
            priorityBefore = Frame.HighestPriority;
            Frame.HighestPriority = Math.Max(priorityBefore, priority);
        }
        else if (depth == 0 && name.SequenceEqual("sheetProtection"u8))
        {
            Frame.IsProtected = TagAttributes.TryGet(tag, "sheet"u8, out var says) && PackageXml.IsTrue(Encoding.UTF8.GetString(says));
        }
        else if (depth == 0 && name.SequenceEqual("legacyDrawing"u8) && TagAttributes.TryGetPrefixed(tag, "id"u8, out var drawing))
        {
            Frame.LegacyDrawingId = Encoding.UTF8.GetString(drawing);
        }
    }

    private static bool TryRange(ReadOnlySpan<byte> tag, out CellRange range)
    {
        range = default;
        return TagAttributes.TryGet(tag, "ref"u8, out var text) && CellRange.TryParse(Encoding.UTF8.GetString(text), out range);
    }

    // An array of one cell, and a shared formula, stand in the very cells that have them.
    private void TakeArray()
    {
        var tag = scanner.Tag;
        if (TagAttributes.TryGet(tag, "t"u8, out var kind) && (kind.SequenceEqual("array"u8) || kind.SequenceEqual("dataTable"u8))
            && TryRange(tag, out var range) && (range.FirstRow, range.FirstColumn) != (range.LastRow, range.LastColumn))
        {
            Frame.Arrays.Add(range);
        }
    }
}
