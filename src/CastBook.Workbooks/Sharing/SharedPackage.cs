using System.IO.Compression;
using System.Xml.Linq;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Writing;

namespace CastBook.Workbooks.Sharing;

/// <summary>A package in the making: a workbook and nothing that hangs on the one it came from.</summary>
/// <param name="output">Where it goes.</param>
internal sealed class SharedPackage(Stream output) : IDisposable
{
    private const string Spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private const string Relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static readonly XNamespace Types = "http://schemas.openxmlformats.org/package/2006/content-types";
    private static readonly XNamespace Relations = "http://schemas.openxmlformats.org/package/2006/relationships";

    private readonly ZipArchive archive = new(output, ZipArchiveMode.Create, leaveOpen: true);
    private readonly List<(string Part, string Type)> types = [];

    /// <summary>Adds a part.</summary>
    /// <param name="part">Its name.</param>
    /// <param name="type">The type of its content, after what all parts of a workbook share.</param>
    /// <param name="write">Writes it.</param>
    public void Add(string part, string type, Action<Stream> write)
    {
        types.Add((part, type.Contains('/', StringComparison.Ordinal) ? type : Spreadsheet + type));
        Put(part, write);
    }

    /// <summary>Adds a small part.</summary>
    /// <param name="part">Its name.</param>
    /// <param name="type">The type of its content, after what all parts of a workbook share.</param>
    /// <param name="root">Its root.</param>
    public void Add(string part, string type, XElement root) => Add(part, type, s => s.Write(PartTree.Bytes(root)));

    /// <summary>Adds the relationships of a part.</summary>
    /// <param name="part">The part; empty for the package.</param>
    /// <param name="relations">Id, last word of the type, and target of each.</param>
    public void Relate(string part, IEnumerable<(string Id, string Kind, string Target)> relations)
    {
        var root = new XElement(Relations + "Relationships", relations.Select(r => new XElement(
            Relations + "Relationship", new XAttribute("Id", r.Id), new XAttribute("Type", $"{Relation}/{r.Kind}"), new XAttribute("Target", r.Target))));
        Put(PartNames.RelationshipsOf(part), s => s.Write(PartTree.Bytes(root)));
    }

    /// <summary>Writes the list of types and ends the package.</summary>
    public void Dispose()
    {
        var root = new XElement(Types + "Types",
            new XElement(Types + "Default", new XAttribute("Extension", "rels"), new XAttribute("ContentType", "application/vnd.openxmlformats-package.relationships+xml")),
            new XElement(Types + "Default", new XAttribute("Extension", "xml"), new XAttribute("ContentType", "application/xml")),
            types.Select(t => new XElement(Types + "Override", new XAttribute("PartName", $"/{t.Part}"), new XAttribute("ContentType", t.Type))));
        Put("[Content_Types].xml", s => s.Write(PartTree.Bytes(root)));
        archive.Dispose();
    }

    private void Put(string part, Action<Stream> write)
    {
        var entry = archive.CreateEntry(part, CompressionLevel.Optimal);
        entry.LastWriteTime = PackageWriter.NoTime;
        using var target = entry.Open();
        write(target);
    }
}
