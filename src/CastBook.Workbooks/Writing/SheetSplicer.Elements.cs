using System.Text;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <content>The elements around the cells.</content>
internal sealed partial class SheetSplicer
{
    private void SpliceElements()
    {
        var inserts = new Queue<SheetInsert>(edits.Inserts);
        while (scanner.Next() && scanner.Kind != TagKind.End)
        {
            scanner.KeepBefore(output);
            var local = Encoding.UTF8.GetString(scanner.LocalName);
            if (local == "AlternateContent")
            {
                var alternatives = scanner.TakeElement();
                InsertBefore(RankInside(alternatives), inserts);
                output.Write(alternatives);
                continue;
            }

            InsertBefore(SheetEdits.RankOf(local), inserts);
            if (local == "sheetData")
            {
                SpliceRows();
            }
            else
            {
                SpliceElement(edits.ChangeOf(local));
            }
        }

        scanner.KeepBefore(output);
        foreach (var insert in inserts)
        {
            Write(XmlPart.WithPrefix(insert.Xml, prefix));
        }
    }

    private void InsertBefore(int rank, Queue<SheetInsert> inserts)
    {
        while (rank >= 0 && inserts.TryPeek(out var next) && next.Rank <= rank)
        {
            inserts.Dequeue();
            if (!next.OnlyIfAbsent || next.Rank < rank)
            {
                Write(XmlPart.WithPrefix(next.Xml, prefix));
            }
        }
    }

    /// <summary>The place of an element that is offered in several ways: that of the first way's content.</summary>
    private static int RankInside(byte[] alternatives)
    {
        var inside = new XmlScanner(alternatives);
        while (inside.Next())
        {
            if (SheetEdits.RankOf(Encoding.UTF8.GetString(inside.LocalName)) is >= 0 and var rank)
            {
                return rank;
            }
        }

        return -1;
    }

    private void SpliceElement(Func<byte[], byte[]?>? change)
    {
        if (change is null)
        {
            scanner.SkipElement();
            scanner.Keep(output);
            return;
        }

        output.Write(change(scanner.TakeElement()) ?? []);
    }
}
