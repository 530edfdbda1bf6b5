using System.Globalization;
using System.Text;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>
/// Notes on cells. Ours are known by how their text begins, never by author. A cell that has a note or a thread of the
/// shop's own gets none.
/// </summary>
internal sealed class NoteWriter(BookPackage package, BookEdits edits)
{
    /// <summary>How every note of ours begins.</summary>
    public const string Prefix = "CastBook ";

    private const string AuthorName = "CastBook";

    /// <summary>Makes the notes of ours on a sheet be just these.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="legacyDrawingId">Relationship id of the sheet's note drawing, where it has one.</param>
    /// <param name="wanted">The text of each note, by cell; each begins with <see cref="Prefix"/>, the word of a severity and a colon.</param>
    public void Write(SheetPart sheet, string? legacyDrawingId, IReadOnlyDictionary<(int Row, int Column), string> wanted)
    {
        var relations = package.Relationships(sheet.PartName);
        var comments = relations.FirstOrDefault(r => r.Type.EndsWith("/comments", StringComparison.Ordinal))?.Target;
        if (comments is null && wanted.Count == 0)
        {
            return;
        }

        var part = new XmlPart(comments is null ? EmptyComments() : package.Read(comments));
        if (part.Child(part.Root, "commentList") is not { } list)
        {
            return;
        }

        var standing = part.Children(list).Select(c => (Element: c, Cell: CellOf(part, c), Text: TextOf(part, c))).ToList();
        var ours = standing.Where(s => IsOurs(s.Text)).ToList();
        var theirs = standing.Except(ours).Select(s => s.Cell).Concat(Threads(relations)).ToHashSet();
        var due = wanted.Where(w => !theirs.Contains(w.Key)).OrderBy(w => w.Key).ToList();
        if (due.Select(d => (d.Key, d.Value)).SequenceEqual(ours.Select(o => (o.Cell, o.Text)).Order()))
        {
            return;
        }

        ours.ForEach(o => part.Replace(o.Element, ""));
        var author = Author(part);
        part.Append(list, string.Concat(due.Select(d => Comment(part, d.Key, d.Value, author))));
        WriteDrawing(sheet, legacyDrawingId, [.. ours.Select(o => o.Cell)], [.. due.Select(d => d.Key)]);
        if (comments is not null)
        {
            edits.Replace(comments, part.ToBytes());
            return;
        }

        var added = edits.AddPart("xl/comments#.xml", part.ToBytes(), "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml");
        edits.Relate(sheet.PartName, "comments", added);
    }

    /// <summary>Takes the notes of ours off a sheet, and with the last note what shows it.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="legacyDrawingId">Relationship id of the sheet's note drawing, where it has one.</param>
    /// <returns>How many there were.</returns>
    public int Remove(SheetPart sheet, string? legacyDrawingId)
    {
        var relations = package.Relationships(sheet.PartName);
        if (relations.FirstOrDefault(r => r.Type.EndsWith("/comments", StringComparison.Ordinal)) is not { } comments)
        {
            return 0;
        }

        var part = new XmlPart(package.Read(comments.Target));
        if (part.Child(part.Root, "commentList") is not { } list)
        {
            return 0;
        }

        var standing = part.Children(list);
        var ours = standing.Where(c => IsOurs(TextOf(part, c))).ToList();
        if (ours.Count == 0)
        {
            return 0;
        }

        if (ours.Count == standing.Count)
        {
            edits.Cut(sheet.PartName, comments.Id);
        }
        else
        {
            ours.ForEach(o => part.Replace(o, ""));
            RemoveAuthor(part, [.. standing.Except(ours)]);
            edits.Replace(comments.Target, part.ToBytes());
        }

        if (relations.FirstOrDefault(r => r.Id == legacyDrawingId) is { } relation)
        {
            RemoveDrawing(sheet, relation, [.. ours.Select(o => CellOf(part, o))]);
        }

        return ours.Count;
    }

    private void RemoveDrawing(SheetPart sheet, Relationship relation, IReadOnlyCollection<(int Row, int Column)> cells)
    {
        var drawing = NoteDrawing.Without(Encoding.Latin1.GetString(XmlEncoding.ToUtf8(package.Read(relation.Target))), cells);
        if (NoteDrawing.HasShapes(drawing))
        {
            edits.Replace(relation.Target, Encoding.Latin1.GetBytes(drawing));
            return;
        }

        edits.Cut(sheet.PartName, relation.Id);
        edits.Sheet(sheet.PartName).Change("legacyDrawing", _ => null);
    }

    /// <summary>Our name goes from the authors where no note that stays counts on its place.</summary>
    private static void RemoveAuthor(XmlPart part, IReadOnlyList<XmlElement> left)
    {
        if (part.Child(part.Root, "authors") is not { } authors || part.Children(authors) is not [.., var last] known
            || part.InnerText(last) != AuthorName)
        {
            return;
        }

        var ours = (known.Count - 1).ToString(CultureInfo.InvariantCulture);
        if (left.All(c => part.Attribute(c, "authorId") != ours))
        {
            part.Replace(last, "");
        }
    }

    /// <summary>Whether a note begins as ours do: a shop's own "CastBook says too heavy, ask Ann" is the shop's.</summary>
    private static bool IsOurs(string text) => Enum.GetValues<Severity>()
        .Any(severity => text.StartsWith($"{Prefix}{MarkRules.WordOf(severity)}: ", StringComparison.Ordinal));

    private static string Comment(XmlPart part, (int Row, int Column) cell, string text, int author) => part.Own(
        $"""<~comment ref="{CellRef.AddressOf(cell.Row, cell.Column)}" authorId="{author}"><~text><~r>"""
        + $"""<~rPr><~sz val="9"/><~color rgb="{CellLook.Ink}"/><~rFont val="Calibri"/><~family val="2"/></~rPr>"""
        + $"""<~t xml:space="preserve">{XmlText.EscapeCell(text)}</~t></~r></~text></~comment>""");

    /// <summary>Cells with a thread: an office program throws away what others write into its note.</summary>
    private List<(int Row, int Column)> Threads(IReadOnlyList<Relationship> relations)
    {
        var cells = new List<(int Row, int Column)>();
        foreach (var relation in relations.Where(r => !r.IsExternal && r.Is("threadedComment") && package.Has(r.Target)))
        {
            var part = new XmlPart(package.Read(relation.Target));
            cells.AddRange(part.Children(part.Root).Select(c => CellOf(part, c)));
        }

        return cells;
    }

    private static (int Row, int Column) CellOf(XmlPart part, XmlElement comment) =>
        CellRef.TryParse(part.Attribute(comment, "ref"), out var row, out var column) ? (row, column) : default;

    private static string TextOf(XmlPart part, XmlElement comment)
    {
        var text = new StringBuilder();
        if (part.Child(comment, "text") is { } body)
        {
            foreach (var piece in part.Children(body))
            {
                var run = piece.LocalName == "r" ? part.Child(piece, "t") : piece.LocalName == "t" ? piece : null;
                text.Append(run is { } t ? XmlText.Unescape(part.InnerText(t)) : "");
            }
        }

        return text.ToString();
    }

    private static int Author(XmlPart part)
    {
        if (part.Child(part.Root, "authors") is not { } authors)
        {
            return 0;
        }

        var known = part.Children(authors);
        for (var i = 0; i < known.Count; i++)
        {
            if (part.InnerText(known[i]) == AuthorName)
            {
                return i;
            }
        }

        part.Append(authors, part.Own($"<~author>{AuthorName}</~author>"));
        return known.Count;
    }

    private byte[] EmptyComments() => Encoding.UTF8.GetBytes(
        """<?xml version="1.0" encoding="UTF-8" standalone="yes"?>""" + "\r\n"
        + $"""<comments xmlns="{edits.Dialect.Spreadsheet}"><authors><author>{AuthorName}</author></authors><commentList></commentList></comments>""");

    private void WriteDrawing(
        SheetPart sheet, string? id, IReadOnlyCollection<(int Row, int Column)> remove, IReadOnlyList<(int Row, int Column)> add)
    {
        if (id is not null && package.Relationships(sheet.PartName).FirstOrDefault(r => r.Id == id) is { } relation)
        {
            // One character a byte, so that every byte of the shop's shapes survives; what we add is plain ASCII.
            var drawing = Encoding.Latin1.GetString(XmlEncoding.ToUtf8(package.Read(relation.Target)));
            edits.Replace(relation.Target, Encoding.Latin1.GetBytes(NoteDrawing.Change(drawing, remove, add)));
            return;
        }

        var fresh = NoteDrawing.Change(NoteDrawing.Empty(sheet.Index + 1), [], add);
        edits.DefaultType(NoteDrawing.Extension, NoteDrawing.ContentType);
        var part = edits.AddPart("xl/drawings/vmlDrawing#.vml", Encoding.UTF8.GetBytes(fresh), contentType: null);
        var newId = edits.Relate(sheet.PartName, "vmlDrawing", part);
        edits.Sheet(sheet.PartName).Insert(
            "legacyDrawing", $"""<~legacyDrawing xmlns:r="{edits.Dialect.Relationships}" r:id="{newId}"/>""");
    }
}
