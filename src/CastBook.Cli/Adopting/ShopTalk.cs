using CastBook.Planning.Shops;
using CastBook.Templates;
using CastBook.Workbooks.Adopting;

namespace CastBook.Cli.Adopting;

/// <summary>The few things that only the shop knows, each asked once; what the book or the files around it say already is not asked.</summary>
/// <param name="prompt">Where it is asked.</param>
/// <param name="look">What is known.</param>
internal sealed class ShopTalk(Prompt prompt, BookLook look)
{
    private readonly ShopAnswers answers = new();

    /// <summary>Asks, and gives what was answered.</summary>
    public ShopAnswers Ask()
    {
        prompt.Say("");
        prompt.Say("What only you know. Enter alone leaves a question open; filling the book asks again.");
        Weights();
        Material();
        if (look.Shop is not { FlaskSizes.Count: > 0 })
        {
            Choose(SettingName.CastingMethod, "How do you cast");
            Flasks();
        }

        if (look.Shop is not { Crucibles.Count: > 0 } && !look.SettingsSaid.Contains(SettingName.CrucibleHolds)
            && prompt.Number("What your crucible holds to the brim, in ml (weigh water: 1 g is 1 ml; dry it well)") is { } holds)
        {
            answers.Add("Crucibles", new Dictionary<string, object> { ["Crucible"] = "crucible", ["Holds (ml)"] = holds });
        }

        if (look.Shop is not { Kilns.Count: > 0 })
        {
            Kiln();
        }

        return answers;
    }

    private void Weights()
    {
        if (!look.SaysWhatIsWeighed)
        {
            Choose(SettingName.WeightsAreOf, "What does the weight column weigh");
        }

        Choose(SettingName.WeightsInclude, "Are pieces weighed alone, or with their gates and sprue on");
        if (!look.SettingsSaid.Contains(SettingName.SupportsShare)
            && prompt.Number("How much of that weight is supports that are cut off later, in % (0 for none)", mayBeZero: true) is { } share)
        {
            answers.Settings[SettingName.SupportsShare] = share;
        }
    }

    private void Material()
    {
        if (look.SettingsSaid.Contains(SettingName.PatternMaterial) || prompt.Words("Your usual pattern material, by the name you know it by") is not { } name)
        {
            return;
        }

        answers.Settings[SettingName.PatternMaterial] = name;
        if (look.Shop?.Materials.Any(m => m.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) == true)
        {
            return;
        }

        var row = new Dictionary<string, object> { ["Material"] = name };
        Put(row, "Kind", prompt.Choice("  Is it", ["wax", "resin"]));
        Put(row, "Density (g/cm³)", prompt.Number("  Its density, solid and cured, in g/cm³ (open: by a test cube)"));
        if (!row.ContainsKey("Density (g/cm³)"))
        {
            Put(row, "Cube weighs (g)", prompt.Number("  A solid test cube of it weighs, in g"));
            Put(row, "Cube edge (mm)", row.ContainsKey("Cube weighs (g)") ? prompt.Number("  Its edge as a caliper reads it, in mm") : null);
        }

        answers.Add("Materials", row);
    }

    private void Flasks()
    {
        while (prompt.Number("A flask you own: inside diameter in mm (Enter: no more)") is { } diameter)
        {
            var row = new Dictionary<string, object> { ["Inside diameter (mm)"] = diameter };
            Put(row, "Height (mm)", prompt.Number("  Its height, in mm"));
            Put(row, "Owned", prompt.Number("  How many you own"));
            Put(row, "Sprue diameter (mm)", prompt.Number("  Diameter of the trunk that pieces hang on, in mm"));
            Put(row, "Base height (mm)", prompt.Number("  From the rim to where the first gate may stand, in mm"));
            row["Size"] = FormattableString.Invariant($"{diameter} × {row.GetValueOrDefault("Height (mm)", "?")}");
            answers.Add("Flasks", row);
        }
    }

    private void Kiln()
    {
        var shape = prompt.Choice("Is the floor of your kiln", ["square", "round"]);
        if (shape is null)
        {
            return;
        }

        var row = new Dictionary<string, object> { ["Kiln"] = "kiln", ["Shape"] = shape };
        if (shape == "round")
        {
            Put(row, "Inside diameter (mm)", prompt.Number("  Its usable diameter, in mm"));
        }
        else
        {
            Put(row, "Inside width (mm)", prompt.Number("  Its usable width, in mm"));
            Put(row, "Inside depth (mm)", prompt.Number("  Its usable depth, in mm"));
        }

        answers.Add("Kilns", row);
    }

    private void Choose(string setting, string question)
    {
        if (!look.SettingsSaid.Contains(setting) && prompt.Choice(question, SettingGuide.Of(setting).Choices) is { } chosen)
        {
            answers.Settings[setting] = chosen;
        }
    }

    private static void Put(Dictionary<string, object> row, string heading, object? value)
    {
        if (value is not null)
        {
            row[heading] = value;
        }
    }
}
