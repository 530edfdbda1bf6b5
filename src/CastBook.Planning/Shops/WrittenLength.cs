using System.Globalization;
using UnitsNet;

namespace CastBook.Planning.Shops;

/// <summary>A unit that lengths are written in.</summary>
/// <param name="Name">As headings and sentences write it.</param>
/// <param name="One">One of it.</param>
/// <param name="Format">Number format of a length for a reader.</param>
/// <param name="OnTree">Number format of a height on a tree.</param>
public sealed record WrittenLength(string Name, Length One, string Format, string OnTree)
{
    /// <summary>Millimetres.</summary>
    public static WrittenLength Millimetre { get; } = new("mm", Length.FromMillimeters(1), "#,0.#", "0");

    /// <summary>Inches.</summary>
    public static WrittenLength Inch { get; } = new("in", Length.FromMillimeters(25.4), "#,0.00#", "0.00");

    /// <summary>What lengths may be written in.</summary>
    public static IReadOnlyList<WrittenLength> All { get; } = [Millimetre, Inch];

    /// <summary>A length for a reader, with the unit.</summary>
    /// <param name="length">The length.</param>
    public string Say(Length length) => $"{(length / One).ToString(Format, CultureInfo.InvariantCulture)} {Name}";

    /// <summary>A height on a tree, the unit left out.</summary>
    /// <param name="length">The height.</param>
    public string OnTheTree(Length length) => (length / One).ToString(OnTree, CultureInfo.InvariantCulture);
}
