using System.Xml;
using System.Xml.Linq;
using CastBook.Workbooks.Files;
using CastBook.Workbooks.Reading.Package;

namespace CastBook.Workbooks.Sharing;

/// <summary>Small parts as trees of elements.</summary>
internal static class PartTree
{
    /// <summary>A part of a book; DTDs, comments and processing instructions are not read.</summary>
    /// <param name="package">The book.</param>
    /// <param name="part">The part.</param>
    public static XElement Load(BookPackage package, string part)
    {
        // Refuses what is nested too deep for a tree.
        PackageXml.EachElement(package.OpenPart(part), part, _ => { });
        try
        {
            using var reader = PackageXml.Open(package.OpenPart(part));
            return XElement.Load(reader);
        }
        catch (XmlException e)
        {
            throw BookRefusedException.Damaged(part, e);
        }
    }

    /// <summary>A tree that is written in the program.</summary>
    /// <param name="xml">The tree.</param>
    public static XElement Parse(string xml) => XElement.Parse(xml);

    /// <summary>The part's bytes.</summary>
    /// <param name="root">Its root.</param>
    public static byte[] Bytes(XElement root)
    {
        using var bytes = new MemoryStream();
        using (var writer = XmlWriter.Create(bytes, Plain))
        {
            root.Save(writer);
        }

        return bytes.ToArray();
    }

    /// <summary>How parts are written.</summary>
    public static XmlWriterSettings Plain { get; } = new() { Encoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false), CloseOutput = false };
}
