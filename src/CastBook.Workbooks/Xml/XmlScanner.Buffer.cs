using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Xml;

/// <content>How the scanner finds its way through the buffer, and fills it.</content>
internal sealed partial class XmlScanner
{
    private int Find(byte wanted, int from)
    {
        while (true)
        {
            var found = buffer.AsSpan(from, length - from).IndexOf(wanted);
            if (found >= 0)
            {
                return from + found;
            }

            from = length;
            var moved = Fill();
            if (moved < 0)
            {
                return -1;
            }

            from -= moved;
        }
    }

    private int FindEnd(ReadOnlySpan<byte> wanted, int from)
    {
        while (true)
        {
            var found = buffer.AsSpan(from, length - from).IndexOf(wanted);
            if (found >= 0)
            {
                return from + found + wanted.Length;
            }

            var moved = Fill();
            if (moved < 0)
            {
                throw new InvalidDataException(RefusalWords.EndsInComment);
            }

            from -= moved;
        }
    }

    private void FindTagEnd()
    {
        if (!TryFindPlainEnd())
        {
            FindEndBesideQuotes();
        }

        Kind = buffer[tagStart + 1] == (byte)'/' ? TagKind.End : buffer[tagEnd - 2] == (byte)'/' ? TagKind.Empty : TagKind.Start;
    }

    /// <summary>Nearly every tag: its end is in the buffer, and its double quotes close before it.</summary>
    private bool TryFindPlainEnd()
    {
        var rest = buffer.AsSpan(tagStart, length - tagStart);
        var end = rest.IndexOf((byte)'>');
        if (end < 0 || rest[..end].Contains((byte)'\'') || (rest[..end].Count((byte)'"') & 1) == 1)
        {
            return false;
        }

        tagEnd = tagStart + end + 1;
        return true;
    }

    private void FindEndBesideQuotes()
    {
        var at = tagStart + 1;
        while (true)
        {
            var found = buffer.AsSpan(at, length - at).IndexOfAny((byte)'>', (byte)'"', (byte)'\'');
            if (found < 0)
            {
                at = length;
                at -= FillOrFail();
                continue;
            }

            at += found;
            if (buffer[at] == (byte)'>')
            {
                break;
            }

            at = FindQuote(at);
        }

        tagEnd = at + 1;
    }

    private int FindQuote(int at)
    {
        var quote = buffer[at++];
        int close;
        while ((close = buffer.AsSpan(at, length - at).IndexOf(quote)) < 0)
        {
            at -= FillOrFail();
        }

        return at + close + 1;
    }

    private int FillOrFail()
    {
        var moved = Fill();
        return moved >= 0 ? moved : throw new InvalidDataException(RefusalWords.EndsInTag);
    }

    private bool StartsWith(int at, ReadOnlySpan<byte> text) => buffer.AsSpan(at, length - at).StartsWith(text);

    /// <summary>Reads on until so many bytes stand after <paramref name="at"/> or the part ends; answers by how much positions moved.</summary>
    private int Ensure(int at, int bytes)
    {
        var moved = 0;
        while (length - (at - moved) < bytes)
        {
            var step = Fill();
            if (step < 0)
            {
                break;
            }

            moved += step;
        }

        return moved;
    }

    /// <summary>Reads a further chunk; answers by how much all positions moved towards the front, or -1 at the end of the part.</summary>
    private int Fill()
    {
        if (source is null)
        {
            return -1;
        }

        var moved = 0;
        if (length == buffer.Length)
        {
            moved = mark;
            if (length - moved > mostHeld)
            {
                throw BookRefusedException.For(Catalogue.BookTooMuch, RefusalWords.TextTooLong);
            }

            var target = moved > buffer.Length / 2 ? buffer : new byte[buffer.Length * 2];
            buffer.AsSpan(moved, length - moved).CopyTo(target);
            buffer = target;
            offset += moved;
            length -= moved;
            tagStart -= moved;
            tagEnd -= moved;
            mark = 0;
        }

        var read = source.Read(buffer, length, buffer.Length - length);
        length += read;
        return read > 0 || moved > 0 ? moved : -1;
    }
}
