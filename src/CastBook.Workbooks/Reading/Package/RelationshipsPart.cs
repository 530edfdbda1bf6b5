namespace CastBook.Workbooks.Reading.Package;

/// <summary>Reads the relationships of a part.</summary>
internal static class RelationshipsPart
{
    public static IReadOnlyList<Relationship> Read(BookPackage package, string part)
    {
        var name = PartNames.RelationshipsOf(part);
        if (!package.Has(name))
        {
            return [];
        }

        var found = new List<Relationship>();
        PackageXml.EachElement(package.OpenPart(name), name, element =>
        {
            if (element.LocalName == "Relationship" && element.GetAttribute("Target") is { } target)
            {
                var external = element.GetAttribute("TargetMode") == "External";
                found.Add(new Relationship(
                    element.GetAttribute("Id") ?? "",
                    element.GetAttribute("Type") ?? "",
                    external ? target : package.NameInZip(PartNames.Resolve(part, target)),
                    external));
            }
        });
        return found;
    }
}
