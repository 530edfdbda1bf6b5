namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Compares a part with what it was, element by element, attribute by attribute, text by text, in order.</summary>
internal sealed class PartDiff
{
    private readonly PartRule rule;
    private readonly List<string> losses = [];

    private PartDiff(PartRule rule) => this.rule = rule;

    /// <summary>Elements compared.</summary>
    public int Elements { get; private set; }

    /// <summary>Attributes compared.</summary>
    public int Attributes { get; private set; }

    public IReadOnlyList<string> Losses => losses;

    public static PartDiff Of(byte[] before, byte[] after, PartRule rule)
    {
        var diff = new PartDiff(rule);
        var (was, now) = (RawXml.Read(before), RawXml.Read(after));
        diff.CompareChildren(was, now, "", isTop: true);
        return diff;
    }

    private void Compare(RawNode before, RawNode after, string path)
    {
        Elements++;
        CompareAttributes(before, after, path);
        if (rule.Compare(before, after) is { } found)
        {
            losses.AddRange(found.Select(f => $"{path}: {f}"));
            return;
        }

        CompareChildren(before, after, path, isTop: false);
    }

    private void CompareAttributes(RawNode before, RawNode after, string path)
    {
        // Where a value may differ, all else about the attribute must still be as it was.
        bool MayDiffer(string name) => before[name] != after[name] && rule.MayChange(before, name, before[name], after[name]);
        string Kept(RawAttribute a) => MayDiffer(a.Name) ? a.Raw.Replace(a.Value, "…", StringComparison.Ordinal) : a.Raw;
        var was = before.Attributes.Select(Kept).ToList();
        var now = after.Attributes.Where(a => before[a.Name] is not null || !MayDiffer(a.Name)).Select(Kept).ToList();
        Attributes += was.Count;
        if (!was.SequenceEqual(now))
        {
            losses.Add($"{path}: attributes were [{string.Concat(was)}], are [{string.Concat(now)}]");
        }
    }

    private void CompareChildren(RawNode before, RawNode after, string path, bool isTop)
    {
        var was = Theirs(before, before, isTop);
        var now = Theirs(before, after, isTop);
        for (var i = 0; i < Math.Max(was.Count, now.Count); i++)
        {
            var (old, fresh) = (was.ElementAtOrDefault(i), now.ElementAtOrDefault(i));
            if (old is null || fresh is null || old.Name != fresh.Name)
            {
                losses.Add($"{path}: {Say(old)} was child {i}, {Say(fresh)} is");
                return;
            }

            if (old.IsElement)
            {
                Compare(old, fresh, $"{path}/{old.Name}[{i}]");
            }
            else if (old.Text != fresh.Text && !rule.MayChangeText(before, old.Text, fresh.Text))
            {
                losses.Add($"{path}: text was \"{old.Text}\", is \"{fresh.Text}\"");
            }
        }
    }

    /// <summary>The children without ours; texts that met because ours went between them are one.</summary>
    private List<RawNode> Theirs(RawNode before, RawNode parent, bool isTop)
    {
        var theirs = new List<RawNode>();
        foreach (var child in parent.Children.Where(c => !c.IsElement || !rule.IsOurs(before, parent, c)))
        {
            var node = isTop && child.Text.StartsWith("<?xml ", StringComparison.Ordinal) ? new RawNode("", WithoutEncoding(child.Text)) : child;
            if (IsText(node) && theirs.Count > 0 && IsText(theirs[^1]))
            {
                theirs[^1] = new RawNode("", theirs[^1].Text + node.Text);
            }
            else
            {
                theirs.Add(node);
            }
        }

        return theirs;
    }

    private static bool IsText(RawNode node) => !node.IsElement && !node.Text.StartsWith('<');

    /// <summary>The encoding is how the part is stored, not what it says: parts we edit are stored in UTF-8.</summary>
    private static string WithoutEncoding(string declaration)
    {
        var start = declaration.IndexOf("encoding", StringComparison.Ordinal);
        if (start < 0 || declaration.Contains("utf-8", StringComparison.OrdinalIgnoreCase))
        {
            return declaration.Replace("encoding=\"UTF-8\"", "encoding", StringComparison.Ordinal);
        }

        var quote = declaration.AsSpan(start).IndexOfAny('"', '\'') + start;
        return string.Concat(declaration.AsSpan(0, start), "encoding", declaration.AsSpan(declaration.IndexOf(declaration[quote], quote + 1) + 1));
    }

    private static string Say(RawNode? node) => node switch
    {
        null => "nothing",
        { IsElement: true } => $"<{node.Name}{string.Concat(node.Attributes.Select(a => a.Raw))}>",
        _ => $"\"{node.Text}\"",
    };
}
