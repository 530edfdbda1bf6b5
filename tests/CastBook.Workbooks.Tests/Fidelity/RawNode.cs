namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>A piece of a part just as it is written: nothing resolved, trimmed or folded, so that a lost blank shows.</summary>
/// <param name="Name">The element's name with its prefix; empty for text, comments and instructions.</param>
/// <param name="Text">The raw text of what is no element; empty for an element.</param>
internal sealed record RawNode(string Name, string Text)
{
    /// <summary>The element's attributes in order.</summary>
    public List<RawAttribute> Attributes { get; } = [];

    /// <summary>What stands in the element, in order.</summary>
    public List<RawNode> Children { get; } = [];

    public bool IsElement => Name.Length > 0;

    /// <summary>The name without its prefix.</summary>
    public string LocalName => Name[(Name.IndexOf(':', StringComparison.Ordinal) + 1)..];

    public IEnumerable<RawNode> Elements => Children.Where(c => c.IsElement);

    /// <summary>An attribute's raw value; null where there is none of that name.</summary>
    public string? this[string attribute] => Attributes.FirstOrDefault(a => a.Name == attribute)?.Value;

    public RawNode? Element(string localName) => Elements.FirstOrDefault(e => e.LocalName == localName);

    /// <summary>The element and all elements in it.</summary>
    public IEnumerable<RawNode> All() => Elements.SelectMany(e => e.All()).Prepend(this);

    /// <summary>All text in the element, raw.</summary>
    public string InnerText => string.Concat(Children.Select(c => c.IsElement ? c.InnerText : c.Text));

    public bool Equals(RawNode? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>An attribute as written.</summary>
/// <param name="Name">Its name with its prefix.</param>
/// <param name="Value">What stands between the quotes, entities not resolved.</param>
/// <param name="Raw">All of it: the blanks before it, name, equals sign, quotes.</param>
internal sealed record RawAttribute(string Name, string Value, string Raw);
