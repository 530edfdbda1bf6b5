using System.Reflection;
using CastBook.Planning.Shops;
using CastBook.Templates.Sheets;

namespace CastBook.Templates.Tests.Sheets;

public sealed class HeadingTests
{
    /// <summary>The documented headings, written out once more: a slip of the pen in a sheet must show.</summary>
    private static readonly Dictionary<string, string> Documented = new()
    {
        ["Pieces"] = "Piece|Qty|Pattern weight (g)|Pattern volume (ml)|Material|Alloy|Shape|Length (mm)|Width (mm)|Thickness (mm)|Finest section (mm)"
            + "|Heaviest section (mm)|Gates|Gate diameter (mm)|Gate length (mm)|Stones in|Per tree|Printed at (°C)|Washed (min)|Cured (min)|Due|Night|Keep in flask|Leave out",
        ["Flasks"] = "Size|Inside diameter (mm)|Height (mm)|Owned|Method|Holds (ml)|Powder (g)|Water (ml)|Sprue diameter (mm)|Base height (mm)|Cup (ml)|Above tree (mm)|To wall (mm)|Per tree",
        ["Crucibles"] = "Crucible|Holds (ml)|Rated (g)|Rated for|Alloys|Made of|Owned",
        ["Kilns"] = "Kiln|Shape|Inside width (mm)|Inside depth (mm)|Inside diameter (mm)|Power (kW)|Cools (°C/h)|Reads high by (°C)",
        ["Alloys"] = "Alloy|Composition|Density (g/cm³)|Solidus (°C)|Liquidus (°C)|Metal temp (°C)|Flask temp fine (°C)|Flask temp ordinary (°C)|Flask temp heavy (°C)"
            + "|Quench after (min)|Loss (%)|Fresh (g)|Re-melt (g)|Price (per g)",
        ["Materials"] = "Material|Kind|Density (g/cm³)|Cube weighs (g)|Cube edge (mm)|Print at least (°C)|Wash at most (min)|Each bath at most (min)|Cure each side (min)|Water rinse|Roughen",
        ["Investments"] = "Investment|Kind|Water per 100|Powder density (g/cm³)|Working time (min)|Set at least (h)|Never above (°C)|Silica|Inversion at most (°C/h)|Kept hot at most (h)|In stock (g)",
        ["Schedules"] = "Schedule|For|Up to diameter (mm)|Up to height (mm)|Load at (°C)|Stage|Target (°C)|Rate (°C/h)|Hold (h)",
        ["Shop"] = "Setting|Value|Unit|What it is for",
    };

    [Fact]
    public void CastingNight_EverySheet_HasTheDocumentedHeadings()
    {
        var book = SavedBook.Starter();

        book.Sheets.Keys.ShouldBe(["Read me", .. Documented.Keys]);
        foreach (var (sheet, headings) in Documented)
        {
            string.Join('|', book.Row(sheet, 1)).ShouldBe(headings);
        }
    }

    [Fact]
    public void DemoNight_Pieces_HasDocumentedHeadingsAndTwoOfTheShopsOwn()
    {
        var known = Documented["Pieces"].Split('|');

        var headings = SavedBook.Demo().Row("Pieces", 4);

        headings.Except(known).ShouldBe(["Customer", "Bench note"]);
        headings.Intersect(known).ShouldBe(known.Intersect(headings), "in the documented order");
    }

    [Fact]
    public void DemoNight_OtherSheets_HaveTheDocumentedHeadings()
    {
        var book = SavedBook.Demo();

        foreach (var (sheet, headings) in Documented.Where(s => s.Key != "Pieces"))
        {
            string.Join('|', book.Row(sheet, 1)).ShouldBe(headings);
        }
    }

    [Fact]
    public void Settings_Names_AreThoseThatAreRead()
    {
        var known = typeof(SettingName).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!);

        SettingsSheet.Settings.Select(s => s.Name).Order(StringComparer.Ordinal).ShouldBe(known.Order(StringComparer.Ordinal));
    }

    /// <summary>Office programs cut longer messages or refuse the file.</summary>
    [Fact]
    public void Columns_Messages_FitAnInputMessage()
    {
        foreach (var column in ShopSheets.All.SelectMany(s => s.Columns))
        {
            column.Meaning.Length.ShouldBeInRange(1, 255, column.Heading);
            column.Heading.Length.ShouldBeLessThanOrEqualTo(32, column.Heading);
        }
    }

    [Fact]
    public void ReadMe_EveryColumnAndSetting_IsExplained()
    {
        var text = TemplateMaker.ReadMe();

        foreach (var column in ShopSheets.All.SelectMany(s => s.Columns))
        {
            text.ShouldContain(column.Needed ? $"| **{column.Heading}** | {column.Meaning} |" : $"| {column.Heading} | {column.Meaning} |");
        }

        foreach (var setting in SettingsSheet.Settings)
        {
            text.ShouldContain($"| {setting.Name} | {setting.Unit} | {setting.WhatFor} |");
        }
    }
}
