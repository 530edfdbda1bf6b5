using System.Collections.Frozen;
using System.Globalization;
using System.Xml.Linq;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Sharing;

/// <summary>Which elements and attributes of a part may be shared; everything that it does not name is left behind.</summary>
/// <remarks>Values must be numbers, colours, ranges of cells or words of the file format: no text of a person fits through.</remarks>
internal sealed class AllowList
{
    /// <summary>The namespace of what is written, whatever family the source is of.</summary>
    public static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private const int Deepest = 24;

    private static readonly FrozenSet<string> Words = (
        "true false on off none solid mediumGray darkGray lightGray darkHorizontal darkVertical darkDown darkUp darkGrid darkTrellis "
        + "lightHorizontal lightVertical lightDown lightUp lightGrid lightTrellis gray125 gray0625 linear path "
        + "thin medium dashed dotted thick double hair mediumDashed dashDot mediumDashDot dashDotDot mediumDashDotDot slantDashDot "
        + "general left center right fill justify centerContinuous distributed top bottom "
        + "single singleAccounting doubleAccounting baseline superscript subscript major minor "
        + "topLeft topRight bottomLeft bottomRight frozen frozenSplit split portrait landscape default downThenOver overThenDown "
        + "whole decimal list date time textLength custom stop warning information between notBetween equal notEqual "
        + "greaterThan lessThan greaterThanOrEqual lessThanOrEqual "
        + "expression cellIs colorScale dataBar iconSet top10 aboveAverage duplicateValues uniqueValues containsBlanks notContainsBlanks "
        + "containsErrors notContainsErrors num percent max min percentile "
        + "3Arrows 3ArrowsGray 3Flags 3TrafficLights1 3TrafficLights2 3Signs 3Symbols 3Symbols2 4Arrows 4ArrowsGray 4RedToBlack 4Rating "
        + "4TrafficLights 5Arrows 5ArrowsGray 5Rating 5Quarters sum average count countNums stdDev var")
        .Split(' ').ToFrozenSet(StringComparer.Ordinal);

    private readonly Dictionary<string, string[]> rules = new(StringComparer.Ordinal);

    /// <param name="rules">A line for each element: its name, then its attributes.</param>
    public AllowList(string rules)
    {
        foreach (var line in rules.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var words = line.Split(' ');
            this.rules[words[0]] = words[1..];
        }
    }

    /// <summary>The element with what may be shared of it; null where none of it may.</summary>
    /// <param name="source">The element.</param>
    public XElement? Copy(XElement source) => Copy(source, 0);

    /// <summary>Whether an element of this name is shared.</summary>
    /// <param name="name">Its name without prefix.</param>
    public bool Names(string name) => rules.ContainsKey(name);

    /// <summary>Whether a value is nobody's text.</summary>
    /// <param name="value">An attribute's value.</param>
    public static bool IsPlain(string value) =>
        Words.Contains(value)
        || double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
        || (value.Length is 6 or 8 && value.All(char.IsAsciiHexDigit))
        || IsRanges(value);

    /// <summary>Whether a value is ranges of cells with blanks between them.</summary>
    /// <param name="value">An attribute's value.</param>
    public static bool IsRanges(string value) =>
        value.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } ranges && ranges.All(r => CellRange.TryParse(r, out _));

    /// <summary>An attribute's value where it is plain; null otherwise.</summary>
    /// <param name="source">The element.</param>
    /// <param name="name">The attribute's name.</param>
    public static string? Plain(XElement source, string name) => source.Attribute(name)?.Value is { } value && IsPlain(value) ? value : null;

    private XElement? Copy(XElement source, int depth)
    {
        if (depth > Deepest || !IsMain(source) || !rules.TryGetValue(source.Name.LocalName, out var attributes))
        {
            return null;
        }

        var copy = new XElement(Main + source.Name.LocalName);
        foreach (var name in attributes)
        {
            if (Plain(source, name) is { } value)
            {
                copy.SetAttributeValue(name, value);
            }
        }

        copy.Add(source.Elements().Select(e => Copy(e, depth + 1)).Where(e => e is not null));
        return copy;
    }

    /// <summary>Whether an element is one of the file format's own, in either family.</summary>
    /// <param name="element">The element.</param>
    public static bool IsMain(XElement element) =>
        element.Name.NamespaceName.EndsWith("/spreadsheetml/2006/main", StringComparison.Ordinal)
        || element.Name.NamespaceName.EndsWith("/spreadsheetml/main", StringComparison.Ordinal);
}
