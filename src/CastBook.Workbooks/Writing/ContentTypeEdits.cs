using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>What the list of content types must say of parts that come and go.</summary>
internal sealed class ContentTypeEdits
{
    /// <summary>The part that holds the list.</summary>
    public const string Part = "[Content_Types].xml";

    private readonly List<(string Part, string Type)> overrides = [];
    private readonly Dictionary<string, string> defaults = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Gives a part that is added its type.</summary>
    /// <param name="part">The part.</param>
    /// <param name="type">The content type.</param>
    public void Override(string part, string type) => overrides.Add((part, type));

    /// <summary>Makes sure an extension has a type; one that it has stays.</summary>
    /// <param name="extension">The extension, without a dot.</param>
    /// <param name="type">The content type.</param>
    public void Default(string extension, string type) => defaults[extension] = type;

    /// <summary>The list with these edits; null where nothing changes.</summary>
    /// <param name="package">The package as read.</param>
    /// <param name="removed">The parts that go.</param>
    public byte[]? Of(BookPackage package, IReadOnlySet<string> removed)
    {
        var list = new XmlPart(package.Read(Part));
        var children = list.Children(list.Root);
        foreach (var (extension, type) in defaults)
        {
            if (!children.Any(c => c.LocalName == "Default" && string.Equals(list.Attribute(c, "Extension"), extension, StringComparison.OrdinalIgnoreCase)))
            {
                var xml = list.Own(DefaultXml(extension, type));
                if (children.Count > 0)
                {
                    list.InsertBefore(children[0], xml);
                }
                else
                {
                    list.Append(list.Root, xml);
                }
            }
        }

        foreach (var (name, type) in overrides)
        {
            list.Append(list.Root, list.Own($"""<~Override PartName="/{XmlText.EscapeAttribute(name)}" ContentType="{type}"/>"""));
        }

        bool IsGone(string part) => removed.Contains(part.TrimStart('/'));
        foreach (var child in children.Where(c => c.LocalName == "Override" && IsGone(list.Attribute(c, "PartName") ?? "")))
        {
            list.Replace(child, "");
        }

        RemoveDefault(package, removed, list, children);
        return list.IsEdited ? list.ToBytes() : null;
    }

    /// <summary>The type we once gave note drawings goes with the last of them that needs it; it stands first, where we put it.</summary>
    private static void RemoveDefault(BookPackage package, IReadOnlySet<string> removed, XmlPart list, IReadOnlyList<XmlElement> children)
    {
        if (removed.Count == 0 || children.Count == 0 || list.Text(children[0]) != list.Own(DefaultXml(NoteDrawing.Extension, NoteDrawing.ContentType)))
        {
            return;
        }

        var named = children.Select(c => (list.Attribute(c, "PartName") ?? "").TrimStart('/')).ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (package.Parts.All(p => removed.Contains(p) || named.Contains(p) || !p.EndsWith($".{NoteDrawing.Extension}", StringComparison.OrdinalIgnoreCase)))
        {
            list.Replace(children[0], "");
        }
    }

    private static string DefaultXml(string extension, string contentType) => $"""<~Default Extension="{extension}" ContentType="{contentType}"/>""";
}
