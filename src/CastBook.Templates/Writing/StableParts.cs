using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace CastBook.Templates.Writing;

/// <summary>Copies a package as ClosedXML 0.95.4 saves it so that the same book gives the same bytes, and mends what it leaves untidy.</summary>
internal static partial class StableParts
{
    private const string RootRelationships = "_rels/.rels";
    private const string ContentTypes = "[Content_Types].xml";
    private const string Program = "docProps/app.xml";
    private const string Core = "docProps/core.xml";
    private const string CoreType = "application/vnd.openxmlformats-package.core-properties+xml";

    /// <summary>The saved list of parts names print areas that do not exist and another program as the maker.</summary>
    private const string ProgramText =
        """<?xml version="1.0" encoding="utf-8"?><Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>CastBook</Application></Properties>""";

    /// <summary>The earliest time that a zip entry can hold.</summary>
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>Copies every part, the list of content types first and the others by name, without times.</summary>
    /// <param name="package">The package; read from its position.</param>
    /// <param name="output">Where to; left open.</param>
    public static void Copy(Stream package, Stream output)
    {
        using var source = new ZipArchive(package, ZipArchiveMode.Read, leaveOpen: true);
        using var target = new ZipArchive(output, ZipArchiveMode.Create, leaveOpen: true);
        var parts = source.Entries
            .Select(e => (Name: RandomName().Replace(e.FullName, Core), Entry: e))
            .OrderBy(p => p.Name != ContentTypes)
            .ThenBy(p => p.Name, StringComparer.Ordinal);
        foreach (var (name, from) in parts)
        {
            var entry = target.CreateEntry(name, CompressionLevel.Optimal);
            entry.LastWriteTime = NoTime;
            using var reader = new StreamReader(from.Open(), Encoding.UTF8);
            using var writer = new StreamWriter(entry.Open(), new UTF8Encoding(false));
            writer.Write(WithUsualPrefixes(Mend(name, reader.ReadToEnd())));
        }
    }

    private static string Mend(string name, string text) => name switch
    {
        Program => ProgramText,
        ContentTypes => RandomDefault().Replace(text, "").Replace("</Types>", $"""<Override PartName="/{Core}" ContentType="{CoreType}" /></Types>""", StringComparison.Ordinal),
        RootRelationships => Numbered(RandomName().Replace(text, Core)),
        "xl/_rels/workbook.xml.rels" => text.Replace("Target=\"/xl/", "Target=\"", StringComparison.Ordinal),
        _ when name.StartsWith("xl/worksheets/_rels/", StringComparison.Ordinal) => text.Replace("Target=\"/xl/", "Target=\"../", StringComparison.Ordinal),
        "xl/styles.xml" => WithoutEmptyFormat(text),

        // Columns that are not named with their dollars are not printed again by every program.
        "xl/workbook.xml" => PrintTitle().Replace(text, "!$$$1:$$$2"),
        _ when name.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal) =>
            EmptyFormula().Replace(text, "").Replace(" t=\"s\" />", " />", StringComparison.Ordinal).Replace("state=\"frozenSplit\"", "state=\"frozen\"", StringComparison.Ordinal),
        _ => text,
    };

    /// <summary>The prefixes that every reader knows: some libraries compare names and not namespaces, and cannot open the book otherwise.</summary>
    private static string WithUsualPrefixes(string text)
    {
        if (text.Contains("xmlns:x=\"http://schemas.openxmlformats.org/spreadsheetml", StringComparison.Ordinal))
        {
            return text.Replace("<x:", "<", StringComparison.Ordinal).Replace("</x:", "</", StringComparison.Ordinal).Replace("xmlns:x=", "xmlns=", StringComparison.Ordinal);
        }

        return text.Contains("<coreProperties", StringComparison.Ordinal)
            ? CoreName().Replace(text, "$1cp:$2").Replace(" xmlns=\"", " xmlns:cp=\"", StringComparison.Ordinal)
            : text;
    }

    /// <summary>A format of its own for number 0, the built-in one, without any code in it.</summary>
    private static string WithoutEmptyFormat(string text)
    {
        var without = EmptyFormat().Replace(text, "");
        return without == text
            ? text
            : FormatCount().Replace(without, m => $"{m.Groups[1].Value}{int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture) - 1}\"");
    }

    /// <summary>Relationship ids are random in the root; nothing refers to them by id.</summary>
    private static string Numbered(string text)
    {
        var next = 0;
        return Id().Replace(text, _ => $"Id=\"rId{++next}\"");
    }

    [GeneratedRegex("package/services/metadata/core-properties/[0-9a-f]+\\.psmdcp")]
    private static partial Regex RandomName();

    [GeneratedRegex("""<Default Extension="psmdcp"[^>]*/>""")]
    private static partial Regex RandomDefault();

    [GeneratedRegex("<x:formula[12]></x:formula[12]>|<x:formula[12] ?/>")]
    private static partial Regex EmptyFormula();

    [GeneratedRegex("(</?)(coreProperties|lastModifiedBy|category|keywords|revision|contentStatus|version)")]
    private static partial Regex CoreName();

    [GeneratedRegex("""<x:numFmt numFmtId="0" formatCode="" ?/>""")]
    private static partial Regex EmptyFormat();

    [GeneratedRegex("(<x:numFmts count=\")([0-9]+)\"")]
    private static partial Regex FormatCount();

    [GeneratedRegex("(?<=_xlnm.Print_Titles[^/]*)!([A-Z0-9]+):([A-Z0-9]+)")]
    private static partial Regex PrintTitle();

    [GeneratedRegex("Id=\"[^\"]*\"")]
    private static partial Regex Id();
}
