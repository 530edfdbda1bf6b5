using System.Globalization;
using System.Xml.Linq;
using CastBook.Casting.Metals;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Sharing;

/// <summary>The rules of a sheet: drop-down lists and limits of entries, and marks by condition.</summary>
/// <param name="judge">Says which formulas may be shared.</param>
/// <param name="known">Texts that are shared as cells.</param>
/// <param name="own">Texts of the starter books.</param>
/// <param name="tally">Counts what goes.</param>
internal sealed class RuleSharing(FormulaJudge judge, IReadOnlySet<string> known, IReadOnlySet<string> own, ShareTally tally)
{

    private static readonly AllowList Marks = new(
        """
        cfRule type dxfId priority stopIfTrue aboveAverage percent bottom operator rank stdDev equalAverage
        colorScale
        dataBar minLength maxLength showValue
        iconSet iconSet showValue percent reverse
        cfvo type val gte
        color auto indexed rgb theme tint
        """);

    private static readonly AllowList Entries = new("dataValidation type errorStyle operator allowBlank showDropDown showErrorMessage sqref");

    private static readonly HashSet<string> Choices = new(
        [
            .. SettingGuide.All.SelectMany(g => g.Choices), .. CellWords.Yes, .. CellWords.No, .. CellWords.Done,
            "wax", "resin", "gypsum", "high temperature", "planned", "waxed", "invested", "in kiln", "poured",
            "ring", "bar", "flat", "round", "square", "box", "sphere",
        ],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>Marks by condition.</summary>
    /// <param name="source">A <c>conditionalFormatting</c>.</param>
    public XElement? OfMark(XElement source)
    {
        var copy = new XElement(AllowList.Main + "conditionalFormatting");
        copy.SetAttributeValue("sqref", AllowList.Plain(source, "sqref"));
        foreach (var rule in source.Elements().Where(e => e.Name.LocalName == "cfRule"))
        {
            if (Mark(rule) is { } shared)
            {
                copy.Add(shared);
            }
            else
            {
                tally.Add(LeftBehindWords.QuotingMarks);
            }
        }

        return copy.Attribute("sqref") is not null && copy.HasElements ? copy : null;
    }

    private XElement? Mark(XElement rule)
    {
        var formulas = rule.Elements().Where(e => e.Name.LocalName == "formula").Select(e => e.Value).ToList();
        if (Marks.Copy(rule) is not { } copy || copy.Attribute("type") is null || !formulas.TrueForAll(f => judge.IsFree(f, anyNumber: true))
            || copy.Descendants(AllowList.Main + "cfvo").Any(v => v.Attribute("type") is null))
        {
            return null;
        }

        copy.AddFirst(formulas.Select(f => new XElement(AllowList.Main + "formula", f)));
        return copy;
    }

    /// <summary>A drop-down list or a limit, as the file's own element or as the one of later programs.</summary>
    /// <param name="source">A <c>dataValidation</c>.</param>
    public XElement? OfEntry(XElement source)
    {
        var plain = new XElement(AllowList.Main + "dataValidation", source.Attributes().Where(a => !a.IsNamespaceDeclaration && a.Name.Namespace == XNamespace.None));
        if (source.Elements().FirstOrDefault(e => e.Name.LocalName == "sqref") is { } sqref)
        {
            plain.SetAttributeValue("sqref", sqref.Value);
        }

        var copy = Entries.Copy(plain);
        var messages = Messages(source);
        if (copy?.Attribute("sqref") is null || (copy.Attribute("type")?.Value is null or "none" && messages.Count == 0))
        {
            return null;
        }

        foreach (var name in new[] { "formula1", "formula2" })
        {
            if (source.Elements().FirstOrDefault(e => e.Name.LocalName == name)?.Value.Trim() is not { Length: > 0 } formula)
            {
                continue;
            }

            if (!judge.IsFree(formula, anyNumber: true) && !IsKnownList(formula))
            {
                tally.Add(LeftBehindWords.QuotingLists);
                return null;
            }

            copy.Add(new XElement(AllowList.Main + name, formula));
        }

        copy.Add(messages);
        return copy.HasElements || messages.Count > 0 ? copy : null;
    }

    // What a starter book says at a cell is shared; what the shop says there may be anybody's words.
    private List<XAttribute> Messages(XElement source)
    {
        var said = source.Attributes().Where(a => a.Name.LocalName is "promptTitle" or "prompt" or "errorTitle" or "error" && a.Value.Length > 0).ToList();
        var shared = said.Where(a => own.Contains(a.Value)).ToList();
        tally.Add(LeftBehindWords.InputMessages, said.Count > shared.Count ? 1 : 0);
        if (shared.Exists(a => a.Name.LocalName == "prompt") && AllowList.Plain(source, "showInputMessage") is { } show)
        {
            shared.Add(new XAttribute("showInputMessage", show));
        }

        return shared.ConvertAll(a => new XAttribute(a.Name.LocalName, a.Value));
    }

    // A list of words between quotes, each of which stands in a cell that is shared or belongs to the trade.
    private bool IsKnownList(string formula) =>
        formula.Length > 2 && formula[0] == '"' && formula[^1] == '"' && !formula[1..^1].Contains('"', StringComparison.Ordinal)
        && formula[1..^1].Split(',', StringSplitOptions.TrimEntries).All(IsKnown);

    private bool IsKnown(string word) =>
        known.Contains(word) || own.Contains(word) || Choices.Contains(word) || IsSize(word) || BuiltInAlloys.Named(word).Count > 0;

    // Sizes of rings and the like: whole and half ones below a hundred, and no prices.
    private static bool IsSize(string word) =>
        double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size) && size < 100 && 2 * size == Math.Floor(2 * size);
}
