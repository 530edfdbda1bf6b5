using CastBook.Workbooks.Reading.Package;
using CastBook.Workbooks.Tests.Fidelity;

namespace CastBook.Workbooks.Tests.Filling;

/// <summary>The marks and notes of ours on a sheet, each as one line.</summary>
internal static class Marks
{
    public static IReadOnlyList<string> Of(Filled filled, string sheet)
    {
        using var package = BookPackage.Open(new MemoryStream(filled.Bytes));
        var part = package.Sheets.Single(s => s.Name == sheet).PartName;
        var rules = RawXml.Read(package.Read(part)).All().Where(e => e.LocalName == "conditionalFormatting")
            .SelectMany(f => f.Elements.Where(r => r.LocalName == "cfRule").Select(r => $"{f["sqref"]} {System.Net.WebUtility.HtmlDecode(r.InnerText)}"))
            .Where(r => r.Contains("castbook:", StringComparison.Ordinal));
        var notes = package.Relationships(part).Where(r => r.Is("comments"))
            .SelectMany(r => RawXml.Read(package.Read(r.Target)).All().Where(e => e.LocalName == "comment" && NotesRule.IsNoteOfOurs(e)))
            .Select(n => $"{n["ref"]} {n.InnerText}");
        return [.. rules, .. notes];
    }
}
