namespace CastBook.Workbooks.Reading.Package;

/// <summary>What kind of content each part declares, by its name or its extension.</summary>
internal sealed class ContentTypes
{
    private const string PartName = "[Content_Types].xml";

    private readonly Dictionary<string, string> byPart = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, string> byExtension = new(StringComparer.OrdinalIgnoreCase);

    public static ContentTypes Read(BookPackage package)
    {
        var types = new ContentTypes();
        if (!package.Has(PartName))
        {
            return types;
        }

        PackageXml.EachElement(package.OpenPart(PartName), PartName, element =>
        {
            var type = element.GetAttribute("ContentType") ?? "";
            if (element.LocalName == "Override" && element.GetAttribute("PartName") is { } part)
            {
                types.byPart[part.TrimStart('/')] = type;
            }
            else if (element.LocalName == "Default" && element.GetAttribute("Extension") is { } extension)
            {
                types.byExtension[extension] = type;
            }
        });
        return types;
    }

    public string Of(string part) =>
        byPart.TryGetValue(part, out var type) || byExtension.TryGetValue(Path.GetExtension(part).TrimStart('.'), out type)
            ? type
            : "";
}
