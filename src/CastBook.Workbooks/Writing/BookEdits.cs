using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <summary>Everything CastBook wants changed in a package: sheets to splice, parts to replace, add or remove, and how they hang together.</summary>
internal sealed class BookEdits
{
    private const string RelationshipsNamespace = "http://schemas.openxmlformats.org/package/2006/relationships";

    private readonly BookPackage package;
    private readonly Dictionary<string, SheetEdits> sheets = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, byte[]> parts = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<(string Source, string Id, string Type, string Target)> relations = [];
    private readonly ContentTypeEdits contentTypes = new();
    private readonly HashSet<(string Source, string Id)> cut = [];
    private readonly HashSet<string> handedOver = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> removed = new(StringComparer.OrdinalIgnoreCase);

    /// <param name="package">The package as read.</param>
    public BookEdits(BookPackage package)
    {
        this.package = package;
        Dialect = Dialect.Of(package.IsStrict);
    }

    /// <summary>The book as read.</summary>
    public BookPackage Package => package;

    /// <summary>The book's namespaces.</summary>
    public Dialect Dialect { get; }

    /// <summary>Sheets to splice, by part.</summary>
    public IReadOnlyDictionary<string, SheetEdits> Sheets => sheets;

    /// <summary>The parts that may differ from before, once <see cref="Finish"/> has run.</summary>
    public HashSet<string> TouchedParts => new(sheets.Keys.Concat(parts.Keys), StringComparer.OrdinalIgnoreCase);

    /// <summary>The parts that go, once <see cref="Finish"/> has run.</summary>
    public IReadOnlySet<string> RemovedParts => removed;

    /// <summary>The edits of a sheet part.</summary>
    /// <param name="part">The sheet's part.</param>
    public SheetEdits Sheet(string part)
    {
        if (!sheets.TryGetValue(part, out var edits))
        {
            sheets[part] = edits = new SheetEdits();
        }

        return edits;
    }

    /// <summary>A part as it stands now: as replaced, else as in the package.</summary>
    /// <param name="part">The part.</param>
    public byte[] Current(string part) => parts.TryGetValue(part, out var bytes) ? bytes : package.Read(part);

    /// <summary>Replaces a part that exists.</summary>
    /// <param name="part">The part.</param>
    /// <param name="content">Its new bytes.</param>
    public void Replace(string part, byte[] content) => parts[part] = content;

    /// <summary>Adds a part under a free name.</summary>
    /// <param name="pattern">The name with <c>#</c> where a number belongs.</param>
    /// <param name="content">Its bytes.</param>
    /// <param name="contentType">Its content type; null where its extension has a default one.</param>
    /// <returns>The name it got.</returns>
    public string AddPart(string pattern, byte[] content, string? contentType)
    {
        var number = 1;
        string name;
        do
        {
            name = pattern.Replace("#", number++.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        }
        while (package.Has(name) || parts.ContainsKey(name));

        parts[name] = content;
        if (contentType is not null)
        {
            contentTypes.Override(name, contentType);
        }

        return name;
    }

    /// <summary>Keeps a sheet part as it stands under another name, with all it leads to; the old name is then free for new content.</summary>
    /// <param name="part">The sheet's part.</param>
    /// <param name="copy">The part that takes its content; already added.</param>
    public void HandOver(string part, string copy)
    {
        handedOver.Add(part);
        var name = RelationshipsPartOf(part);
        if (package.Has(name))
        {
            parts[RelationshipsPartOf(copy)] = package.Read(name);
            parts[name] = EmptyRelationships();
        }
    }

    /// <summary>The relationships of a part as read; none of a sheet that was handed over.</summary>
    /// <param name="source">The part.</param>
    public IReadOnlyList<Relationship> Relationships(string source) => handedOver.Contains(source) ? [] : package.Relationships(source);

    /// <summary>Makes sure an extension has a content type.</summary>
    /// <param name="extension">The extension, without a dot.</param>
    /// <param name="contentType">The content type.</param>
    public void DefaultType(string extension, string contentType) => contentTypes.Default(extension, contentType);

    /// <summary>Adds a relationship from one part to another.</summary>
    /// <param name="source">The part it belongs to.</param>
    /// <param name="type">The last word of its type.</param>
    /// <param name="target">The part it leads to.</param>
    /// <returns>Its id.</returns>
    public string Relate(string source, string type, string target)
    {
        var taken = package.Relationships(source).Select(r => r.Id)
            .Concat(relations.Where(r => r.Source == source).Select(r => r.Id)).ToHashSet(StringComparer.Ordinal);
        var number = taken.Count + 1;
        while (taken.Contains($"rId{number}"))
        {
            number++;
        }

        var id = $"rId{number}";
        relations.Add((source, id, Dialect.TypeOf(type), target));
        return id;
    }

    /// <summary>Cuts a relationship; parts that nothing else leads to go with it.</summary>
    /// <param name="source">The part it belongs to.</param>
    /// <param name="id">Its id.</param>
    public void Cut(string source, string id) => cut.Add((source, id));

    /// <summary>Takes out the order of calculation, which lists formulas that go: office programs make it anew, and repair one that is wrong.</summary>
    public void DropCalcChain()
    {
        foreach (var chain in package.Relationships(package.WorkbookPart).Where(r => r.Is("calcChain")))
        {
            Cut(package.WorkbookPart, chain.Id);
        }
    }

    /// <summary>The new bytes of every part that is replaced or added, relationships and content types included.</summary>
    public IReadOnlyDictionary<string, byte[]> Finish()
    {
        RemoveWhatWasCut();
        foreach (var group in relations.GroupBy(r => r.Source, StringComparer.OrdinalIgnoreCase))
        {
            var name = RelationshipsPartOf(group.Key);
            var part = new XmlPart(parts.ContainsKey(name) || package.Has(name) ? Current(name) : EmptyRelationships());
            foreach (var (_, id, type, target) in group)
            {
                part.Append(part.Root, part.Own($"""<~Relationship Id="{id}" Type="{type}" Target="{XmlText.EscapeAttribute(Towards(group.Key, target))}"/>"""));
            }

            parts[name] = part.ToBytes();
        }

        foreach (var (name, sheet) in sheets.Where(s => parts.ContainsKey(s.Key) && !s.Value.IsEmpty))
        {
            using var source = new MemoryStream(parts[name]);
            using var spliced = new MemoryStream();
            SheetSplicer.Apply(source, spliced, sheet);
            parts[name] = spliced.ToArray();
        }

        if (parts.Keys.Any(p => p.EndsWith(".rels", StringComparison.OrdinalIgnoreCase)))
        {
            contentTypes.Default("rels", "application/vnd.openxmlformats-package.relationships+xml");
        }

        if (contentTypes.Of(package, removed) is { } types)
        {
            parts[ContentTypeEdits.Part] = types;
        }

        return parts;
    }

    private void RemoveWhatWasCut()
    {
        if (cut.Count == 0)
        {
            return;
        }

        var gone = Reachable([]);
        gone.ExceptWith(Reachable(cut));
        removed.UnionWith(gone.Concat(gone.Select(RelationshipsPartOf)).Where(package.Has));
        foreach (var source in cut.Select(c => c.Source).Distinct().Where(s => !removed.Contains(s)))
        {
            var name = RelationshipsPartOf(source);
            var part = new XmlPart(Current(name));
            var children = part.Children(part.Root);
            var ours = children.Where(c => cut.Contains((source, part.Attribute(c, "Id") ?? ""))).ToList();
            if (ours.Count == children.Count)
            {
                removed.Add(name);
                continue;
            }

            ours.ForEach(relation => part.Replace(relation, ""));
            parts[name] = part.ToBytes();
        }

        foreach (var name in removed)
        {
            parts.Remove(name);
            sheets.Remove(name);
        }
    }

    /// <summary>The parts that relationships lead to from the package itself, as read; some cut.</summary>
    private HashSet<string> Reachable(HashSet<(string Source, string Id)> without)
    {
        var found = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var open = new Queue<string>([""]);
        while (open.TryDequeue(out var source))
        {
            foreach (var relation in package.Relationships(source).Where(r => !r.IsExternal && !without.Contains((source, r.Id)) && found.Add(r.Target)))
            {
                open.Enqueue(relation.Target);
            }
        }

        return found;
    }

    private static byte[] EmptyRelationships() => Encoding.UTF8.GetBytes(
        $"<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<Relationships xmlns=\"{RelationshipsNamespace}\"></Relationships>");

    private static string RelationshipsPartOf(string part)
    {
        var slash = part.LastIndexOf('/');
        return $"{part[..(slash + 1)]}_rels/{part[(slash + 1)..]}.rels";
    }

    /// <summary>The target as seen from the source's folder.</summary>
    private static string Towards(string source, string target)
    {
        var folder = source[..(source.LastIndexOf('/') + 1)];
        var up = "";
        while (!target.StartsWith(folder, StringComparison.OrdinalIgnoreCase))
        {
            up += "../";
            folder = folder[..(folder.TrimEnd('/').LastIndexOf('/') + 1)];
        }

        return up + target[folder.Length..];
    }
}
