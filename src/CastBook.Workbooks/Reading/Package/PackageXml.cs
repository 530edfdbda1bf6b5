using System.Xml;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading.Package;

/// <summary>The one way XML of a package is opened: no DTD, no resolver, bounded.</summary>
internal static class PackageXml
{
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        CloseInput = true,
        MaxCharactersFromEntities = 1,
    };

    /// <summary>A reader over a part; it closes the part with itself.</summary>
    public static XmlReader Open(Stream part) => XmlReader.Create(part, Settings);

    /// <summary>Reads a part to its end, element by element; XML that is broken or too deep refuses the book.</summary>
    /// <param name="part">The part's bytes.</param>
    /// <param name="name">The part's name, for the refusal.</param>
    /// <param name="element">Called on each start tag.</param>
    public static void EachElement(Stream part, string name, Action<XmlReader> element)
    {
        try
        {
            using var reader = Open(part);
            while (reader.Read())
            {
                if (reader.NodeType == XmlNodeType.Element)
                {
                    CheckDepth(reader);
                    element(reader);
                }
            }
        }
        catch (Exception e) when (e is XmlException or InvalidDataException)
        {
            throw BookRefusedException.Damaged(name, e);
        }
    }

    /// <summary>Refuses nesting beyond the cap.</summary>
    public static void CheckDepth(XmlReader reader)
    {
        if (reader.Depth > Caps.Depth)
        {
            throw BookRefusedException.For(Catalogue.BookTooMuch, RefusalWords.NestedTooDeep);
        }
    }

    /// <summary>An attribute by its local name, in any namespace that ends as given (the two families differ in the rest).</summary>
    public static string? Attribute(this XmlReader reader, string localName, string namespaceEnd)
    {
        string? value = null;
        if (reader.MoveToFirstAttribute())
        {
            do
            {
                if (reader.LocalName == localName && reader.NamespaceURI.EndsWith(namespaceEnd, StringComparison.Ordinal)
                    && (namespaceEnd.Length > 0 || reader.NamespaceURI.Length == 0))
                {
                    value = reader.Value;
                }
            }
            while (reader.MoveToNextAttribute());
            reader.MoveToElement();
        }

        return value;
    }

    /// <summary>A yes or no attribute as the file format writes it.</summary>
    public static bool IsTrue(string? value) => value is "1" or "true" or "on";
}
