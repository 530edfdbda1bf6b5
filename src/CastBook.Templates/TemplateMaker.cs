using System.Text;
using CastBook.Templates.Sheets;
using CastBook.Workbooks;
using CastBook.Workbooks.Settings;

namespace CastBook.Templates;

/// <summary>Makes every file of the templates folder that is made and not written by hand.</summary>
public static class TemplateMaker
{
    private const string CastingNight = "casting-night";
    private const string WrenmoorNight = "wrenmoor-night";
    private const string Filled = "filled.xlsx";

    /// <summary>Writes the starter book with its README, the demo's book and the demo filled, over what stands there.</summary>
    /// <param name="templatesFolder">The folder that holds a folder for each template; made where it is missing.</param>
    /// <exception cref="ArgumentException"><paramref name="templatesFolder"/> is null or empty.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static void MakeAll(string templatesFolder)
    {
        ArgumentException.ThrowIfNullOrEmpty(templatesFolder);
        var starter = Directory.CreateDirectory(Path.Combine(templatesFolder, CastingNight)).FullName;
        var demo = Directory.CreateDirectory(Path.Combine(templatesFolder, WrenmoorNight)).FullName;
        using (var book = File.Create(Path.Combine(starter, CastingNight + ".xlsx")))
        {
            StarterBooks.Write(book, StarterKind.Night);
        }

        using (var night = new MemoryStream())
        {
            DemoNight.Write(night);
            File.WriteAllBytes(Path.Combine(demo, WrenmoorNight + ".xlsx"), night.ToArray());
            using var filled = new FileStream(Path.Combine(starter, Filled), FileMode.Create, FileAccess.ReadWrite);
            BookFiller.Fill(night, filled, Filled, BookSettings.None);
        }

        File.WriteAllText(Path.Combine(starter, "README.md"), ReadMe(), new UTF8Encoding(false));
        File.WriteAllText(Path.Combine(templatesFolder, SettingsSchema.FileName), SettingsSchema.Write(), new UTF8Encoding(false));
    }

    /// <summary>The starter's README: what each column means, from the same words as the book's input messages.</summary>
    internal static string ReadMe()
    {
        var text = new StringBuilder();
        text.Append(
            """
            # Casting night

            The book that a shop starts from. Copy `casting-night.xlsx`, replace its example lines with your own (`castbook clear-examples` and
            the book's name takes them out), fill in what you own on the other sheets, save and close it, and run `castbook fill` on the copy. CastBook adds its own columns beside
            the list and its own sheets behind yours; everything else stays as you left it.

            Columns in bold are needed to say anything, or to plan with what the line names. All others make the plan better. Columns may be
            moved, and columns of your own may stand between them. The example lines are those of an invented shop and nobody's data sheet: your makers' data sheets come first.


            """);
        foreach (var sheet in ShopSheets.All)
        {
            Table(text, sheet);
        }

        Settings(text);
        return text.ToString().ReplaceLineEndings("\n");
    }

    private static void Table(StringBuilder text, SheetSpec sheet)
    {
        text.Append($"## {sheet.Name}\n\n{sheet.Purpose}\n\n| Column | What to type |\n| --- | --- |\n");
        foreach (var column in sheet.Columns)
        {
            var heading = column.Needed ? $"**{column.Heading}**" : column.Heading;
            text.Append($"| {heading} | {column.Meaning} |\n");
        }

        text.Append('\n');
    }

    private static void Settings(StringBuilder text)
    {
        text.Append("The settings:\n\n| Setting | Unit | What it is for |\n| --- | --- | --- |\n");
        foreach (var setting in SettingsSheet.Settings)
        {
            text.Append($"| {setting.Name} | {setting.Unit} | {setting.WhatFor} |\n");
        }
    }
}
