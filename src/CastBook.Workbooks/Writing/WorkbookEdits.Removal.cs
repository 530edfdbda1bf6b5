using System.Globalization;
using System.Text;
using CastBook.Workbooks.Reading;
using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Writing;

/// <content>Takes sheets and names out again, and renumbers what counts sheets by their place.</content>
internal sealed partial class WorkbookEdits
{
    /// <summary>Takes out sheets with what only they lead to, and every name of ours.</summary>
    /// <param name="gone">The sheets.</param>
    public void Remove(IReadOnlyCollection<SheetPart> gone)
    {
        var places = gone.Select(s => s.Index).Order().ToList();
        var sheets = part.Children(Sheets);
        foreach (var place in places)
        {
            edits.Cut(package.WorkbookPart, part.Attribute(sheets[place], relationshipId.Name) ?? "");
            part.Replace(sheets[place], "");
        }

        RemoveNames(places);
        if (places.Count > 0)
        {
            Renumber(places);
            ShowOne([.. sheets.Where((_, i) => !places.Contains(i))]);
        }
    }

    /// <summary>Makes the book say again how it computes, where nobody changed that since we did.</summary>
    /// <param name="record">What was written.</param>
    public void RestoreCalculation(FillRecord record)
    {
        if (part.Child(part.Root, CalculationKey) is { } calc && record.Before(CalculationKey, Encoding.UTF8.GetBytes(part.Text(calc))) is { } before)
        {
            part.Replace(calc, Encoding.UTF8.GetString(before));
        }
    }

    private void RemoveNames(List<int> places)
    {
        var names = Names;
        var going = names.Where(n => IsOurs(n) || (LocalSheet(n) is { } sheet && places.Contains(sheet))).ToList();
        if (going.Count > 0 && going.Count == names.Count && part.Child(part.Root, "definedNames") is { } all)
        {
            part.Replace(all, "");
            return;
        }

        going.ForEach(name => part.Replace(name, ""));
        foreach (var name in names.Except(going))
        {
            if (LocalSheet(name) is { } sheet)
            {
                part.SetAttribute(name, "localSheetId", Text(After(sheet, places)));
            }
        }
    }

    private bool IsOurs(XmlElement name) => part.Attribute(name, "name")?.StartsWith(OwnName.Prefix, StringComparison.Ordinal) == true;

    private int? LocalSheet(XmlElement name) => Whole(name, "localSheetId");

    /// <summary>Which sheet is shown, and which tab stands first.</summary>
    private void Renumber(List<int> places)
    {
        if (part.Child(part.Root, "bookViews") is not { } views)
        {
            return;
        }

        var last = sheetNames.Count - places.Count - 1;
        foreach (var view in part.Children(views))
        {
            foreach (var attribute in new[] { "activeTab", "firstSheet" })
            {
                if (Whole(view, attribute) is { } sheet)
                {
                    part.SetAttribute(view, attribute, Text(Math.Clamp(After(sheet, places), 0, last)));
                }
            }
        }
    }

    /// <summary>A book with no sheet to see does not open.</summary>
    private void ShowOne(List<XmlElement> left)
    {
        if (left.Count > 0 && left.TrueForAll(s => part.Attribute(s, "state") is "hidden" or "veryHidden"))
        {
            part.SetAttribute(left[0], "state", "visible");
        }
    }

    private static int After(int sheet, List<int> places) => sheet - places.Count(p => p < sheet);

    private int? Whole(XmlElement element, string attribute) =>
        int.TryParse(part.Attribute(element, attribute), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
