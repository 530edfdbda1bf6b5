using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>What the rules look at around the cells of a sheet.</summary>
internal sealed class SheetElements
{
    private const int LongestChoices = 255;

    /// <summary>The highest differential format used; -1 for none.</summary>
    public int HighestMark { get; private set; } = -1;

    /// <summary>Merged ranges.</summary>
    public List<CellRange> Merges { get; } = [];

    /// <summary>The columns of each <c>col</c>, in order.</summary>
    public List<(int First, int Last)> Columns { get; } = [];

    /// <summary>The relationships that elements lead to.</summary>
    public List<string> RelationIds { get; } = [];

    /// <summary>The range of the sheet's own filter; null where it has none.</summary>
    public string? Filter { get; private set; }

    /// <summary>What is wrong with conditional formats.</summary>
    public List<string> BadMarks { get; } = [];

    /// <summary>What is wrong with data validations.</summary>
    public List<string> BadChoices { get; } = [];

    /// <summary>Formulas of conditional formats and validations that are not whole.</summary>
    public List<string> BadFormulas { get; } = [];

    /// <summary>Lists that say another number of entries than they have.</summary>
    public List<string> BadCounts { get; } = [];

    /// <summary>Reads an element whose opening tag the scanner stands on, to its end.</summary>
    /// <param name="scanner">The scanner.</param>
    /// <param name="name">The element's name.</param>
    public void Read(XmlScanner scanner, string name)
    {
        var count = TagAttributes.Number(scanner.Tag, "count"u8);
        LookAt(scanner, name);
        var (children, depth, from) = (0, scanner.Kind == TagKind.Empty ? 0 : 1, scanner.End);
        while (depth > 0 && scanner.Next())
        {
            if (scanner.Kind == TagKind.End)
            {
                LookAtText(scanner, name, from);
            }
            else
            {
                children += depth == 1 ? 1 : 0;
                LookAt(scanner, name);
            }

            depth += scanner.Kind switch { TagKind.Start => 1, TagKind.End => -1, _ => 0 };
            from = scanner.End;
            scanner.Drop();
        }

        if (name is "mergeCells" or "dataValidations" or "tableParts" && ((count is { } said && said != children) || children == 0))
        {
            BadCounts.Add($"{name} has nothing in it or another count than it says.");
        }
        else if (name == "conditionalFormatting" && children == 0)
        {
            BadMarks.Add("a conditional format has no rule.");
        }
    }

    private void LookAt(XmlScanner scanner, string element)
    {
        var tag = scanner.Tag;
        if (TagAttributes.TryGetPrefixed(tag, "id"u8, out var id))
        {
            RelationIds.Add(Encoding.UTF8.GetString(id));
        }

        if (element == "extLst")
        {
            // Elements of the extensions have the same names, and formats of their own.
            return;
        }

        switch (Encoding.UTF8.GetString(scanner.LocalName))
        {
            case "cfRule":
                HighestMark = Math.Max(HighestMark, TagAttributes.Number(tag, "dxfId"u8) ?? -1);
                BadMarks.AddRange(TagAttributes.Number(tag, "priority"u8) is > 0 ? [] : ["a conditional format has no priority of 1 or more."]);
                break;
            case "conditionalFormatting" when Text(tag, "sqref"u8) is null or "":
                BadMarks.Add("a conditional format has no cells.");
                break;
            case "dataValidation" when Text(tag, "sqref"u8) is null or "":
                BadChoices.Add("a data validation has no cells.");
                break;
            case "mergeCell" when CellRange.TryParse(Text(tag, "ref"u8), out var range):
                Merges.Add(range);
                break;
            case "autoFilter" when element == "autoFilter":
                Filter = Text(tag, "ref"u8);
                break;
            case "col" when element == "cols":
                Columns.Add((TagAttributes.Number(tag, "min"u8) ?? 0, TagAttributes.Number(tag, "max"u8) ?? 0));
                break;
            default:
                break;
        }
    }

    private void LookAtText(XmlScanner scanner, string element, long from)
    {
        if (element is not ("conditionalFormatting" or "dataValidations") || !scanner.LocalName.StartsWith("formula"u8))
        {
            return;
        }

        var text = XmlText.Unescape(Encoding.UTF8.GetString(scanner.TextSince(from)));
        if (!FormulaText.IsWhole(text))
        {
            BadFormulas.Add($"{element} has a formula that is not whole: {text}");
        }
        else if (element == "dataValidations" && text.StartsWith('"') && text.Length > LongestChoices + 2)
        {
            BadChoices.Add($"a list of choices is longer than {LongestChoices} characters.");
        }
    }

    private static string? Text(ReadOnlySpan<byte> tag, ReadOnlySpan<byte> name) =>
        TagAttributes.TryGet(tag, name, out var value) ? Encoding.UTF8.GetString(value) : null;
}
