using System.Globalization;
using CastBook.Planning.Shops;
using CastBook.Templates;
using CastBook.Workbooks.Adopting;

namespace CastBook.Cli.Adopting;

/// <summary>
/// The few things that only the shop knows, each asked once. What the book or <c>castbook.json</c> say is not asked; what the shop
/// file says is offered, to be kept or changed.
/// </summary>
/// <param name="prompt">Where it is asked.</param>
/// <param name="look">What is known.</param>
/// <param name="weightsToldNow">Whether it was only just told which column holds the weights: its heading says nothing of what they weigh.</param>
internal sealed class ShopTalk(Prompt prompt, BookLook look, bool weightsToldNow)
{
    private const string Holds = "Holds (ml)";
    private const string DensityColumn = "Density (g/cm³)";
    private const string ChangeIt = "c";

    private static readonly string[] Asked =
        [SettingName.WeightsAreOf, SettingName.WeightsInclude, SettingName.SupportsShare, SettingName.PatternMaterial, SettingName.CastingMethod];

    private readonly ShopAnswers answers = new();

    /// <summary>Asks, and gives what was answered.</summary>
    public ShopAnswers Ask()
    {
        prompt.Say("");
        prompt.Say(look.File is null
            ? "What only you know. Enter alone leaves a question open; filling the book asks again."
            : "What only you know. Enter alone keeps what stands in [ ]; another answer takes its place.");
        Weights();
        Material();
        if (IsAsked(s => s.FlaskSizes.Count))
        {
            Choose(SettingName.CastingMethod, "How do you cast");
            Flasks();
        }

        Crucible();
        Kiln();
        if (!answers.IsEmpty)
        {
            Names(look, answers);
        }

        return answers;
    }

    /// <summary>What is open of what would be asked.</summary>
    /// <param name="look">What is known.</param>
    public static ShopQuestions Open(BookLook look)
    {
        bool Lacks(Func<Shop, int> count) => look.Shop is not { } shop || count(shop) == 0;
        var sheets = new List<string>();
        void Add(string sheet, bool isOpen) => sheets.AddRange(isOpen ? [sheet] : []);
        Add("Flasks", Lacks(s => s.FlaskSizes.Count));
        Add("Crucibles", Lacks(s => s.Crucibles.Count) && !look.Said.ContainsKey(SettingName.CrucibleHolds));
        Add("Kilns", Lacks(s => s.Kilns.Count));
        Add("Alloys", look.Alloys.Count > 0);
        Add("Materials", look.Materials.Count > 0);
        return new ShopQuestions(sheets, [.. Asked.Where(s => !look.Said.ContainsKey(s) && !(s == SettingName.WeightsAreOf && look.SaysWhatIsWeighed))]);
    }

    /// <summary>Adds a line for each alloy and material that the list names and the shop has no line of.</summary>
    /// <param name="look">What is known.</param>
    /// <param name="answers">Takes the lines.</param>
    public static void Names(BookLook look, ShopAnswers answers)
    {
        var told = answers.Lines.Where(l => l.Sheet == "Materials").Select(l => l.Values.Values.First()).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var alloy in look.Alloys)
        {
            answers.Add("Alloys", new Dictionary<string, object> { ["Alloy"] = alloy });
        }

        foreach (var material in look.Materials.Where(m => !told.Contains(m)))
        {
            answers.Add("Materials", new Dictionary<string, object> { ["Material"] = material });
        }
    }

    // With a shop file, what it says can be changed; without one, what the book says is known.
    private bool IsAsked(Func<Shop, int> count) => look.File is not null || look.Shop is not { } shop || count(shop) == 0;

    private void Weights()
    {
        if (weightsToldNow || !look.SaysWhatIsWeighed)
        {
            Choose(SettingName.WeightsAreOf, "What does the weight column weigh");
        }

        Choose(SettingName.WeightsInclude, "Are pieces weighed alone, or with their gates and sprue on");
        Measure(
            SettingName.SupportsShare, "How much of that weight is supports that are cut off later, in % (0 for none)", look.File?.Settings.SupportsShare?.Percent);
    }

    private void Material()
    {
        var before = Was(SettingName.PatternMaterial);
        if (IsSaidElsewhere(SettingName.PatternMaterial) || prompt.Words("Your usual pattern material, by the name you know it by", before) is not { } name)
        {
            return;
        }

        if (name != before)
        {
            answers.Settings[SettingName.PatternMaterial] = name;
        }

        bool IsIt(Material material) => material.Name.Equals(name, StringComparison.OrdinalIgnoreCase);
        var was = look.File?.Materials.FirstOrDefault(IsIt);
        if (was is null && look.Shop?.Materials.Any(IsIt) == true)
        {
            return;
        }

        var line = new LineTalk(prompt, "Materials", "Material", was?.Name);
        line.Choice("Kind", "  Is it", ["wax", "resin"], was?.Kind?.ToString().ToLowerInvariant());
        if (line.Number(DensityColumn, "  Its density, solid and cured, in g/cm³ (open: by a test cube)", was?.Density?.GramsPerCubicCentimeter) is null
            && line.Number("Cube weighs (g)", "  A solid test cube of it weighs, in g", was?.CubeMass?.Grams) is not null)
        {
            line.Number("Cube edge (mm)", "  Its edge as a caliper reads it, in mm", was?.CubeEdge?.Millimeters);
        }

        line.Finish(answers, was?.Name ?? name);
    }

    private void Flasks()
    {
        foreach (var size in look.File?.FlaskSizes ?? [])
        {
            var owned = size.Owned is { } count ? string.Create(CultureInfo.InvariantCulture, $", {count} owned") : "";
            if (prompt.Words($"Flask {size.Name}{owned}: Enter keeps it, {ChangeIt} changes it") is { } typed && typed.Equals(ChangeIt, StringComparison.OrdinalIgnoreCase))
            {
                Flask(size, prompt.Number("  Its inside diameter, in mm", "mm", size.InsideDiameter?.Millimeters));
            }
        }

        while (prompt.Number($"{(look.File is { FlaskSizes.Count: > 0 } ? "Another" : "A")} flask you own: inside diameter in mm (Enter: no more)", "mm") is { } diameter)
        {
            Flask(null, diameter);
        }
    }

    private void Flask(FlaskSize? was, double? diameter)
    {
        var line = new LineTalk(prompt, "Flasks", "Size", was?.Name);
        line.Put("Inside diameter (mm)", diameter, was?.InsideDiameter?.Millimeters);
        var height = line.Number("Height (mm)", "  Its height, in mm", was?.Height?.Millimeters);
        line.Number("Owned", "  How many you own", was?.Owned);
        line.Number("Sprue diameter (mm)", "  Diameter of the trunk that pieces hang on, in mm", was?.SprueDiameter?.Millimeters);
        line.Number("Base height (mm)", "  From the rim to where the first gate may stand, in mm", was?.BaseHeight?.Millimeters);

        // A name that was made of the measures goes with them; one of the shop's own stays.
        line.Finish(answers, was is null || was.Name == Named(was.InsideDiameter?.Millimeters, was.Height?.Millimeters) ? Named(diameter, height) : was.Name);
    }

    private static string Named(double? diameter, double? height)
    {
        static string Of(double? measure) => measure?.ToString("0.###", CultureInfo.InvariantCulture) ?? "?";
        return $"{Of(diameter)} × {Of(height)}";
    }

    private void Crucible()
    {
        const string Question = "What your crucible holds to the brim, in ml (weigh water: 1 g is 1 ml; dry it well)";
        if (look.Said.ContainsKey(SettingName.CrucibleHolds))
        {
            Measure(SettingName.CrucibleHolds, Question, look.File?.Settings.CrucibleHolds?.Milliliters);
            return;
        }

        // Of several it is not said which one is meant.
        if (!IsAsked(s => s.Crucibles.Count) || look.File is { Crucibles.Count: > 1 })
        {
            return;
        }

        var was = look.File?.Crucibles.SingleOrDefault();
        var line = new LineTalk(prompt, "Crucibles", "Crucible", was?.Name);
        if (line.Number(Holds, Question, was?.Holds?.Milliliters) is not null)
        {
            line.Finish(answers, was?.Name ?? "crucible");
        }
    }

    private void Kiln()
    {
        if (!IsAsked(s => s.Kilns.Count) || look.File is { Kilns.Count: > 1 })
        {
            return;
        }

        var was = look.File?.Kilns.SingleOrDefault();
        var line = new LineTalk(prompt, "Kilns", "Kiln", was?.Name);
        if (line.Choice("Shape", "Is the floor of your kiln", ["square", "round"], was?.Shape) is not { } shape)
        {
            return;
        }

        if (shape == "round")
        {
            line.Number("Inside diameter (mm)", "  Its usable diameter, in mm", was?.InsideDiameter?.Millimeters);
        }
        else
        {
            line.Number("Inside width (mm)", "  Its usable width, in mm", was?.InsideWidth?.Millimeters);
            line.Number("Inside depth (mm)", "  Its usable depth, in mm", was?.InsideDepth?.Millimeters);
        }

        line.Finish(answers, was?.Name ?? "kiln");
    }

    private void Choose(string setting, string question)
    {
        var was = Was(setting) is { } said ? TypedAnswer.Word(setting, said) : null;
        if (!IsSaidElsewhere(setting) && prompt.Choice(question, SettingGuide.Of(setting).Choices, setting, was) is { } chosen && chosen != was)
        {
            answers.Settings[setting] = chosen;
        }
    }

    private void Measure(string setting, string question, double? inFile)
    {
        var was = Was(setting) is null ? null : inFile;
        if (!IsSaidElsewhere(setting) && prompt.Number(question, SettingGuide.Of(setting).Unit, was, mayBeZero: setting == SettingName.SupportsShare) is { } number && number != was)
        {
            answers.Settings[setting] = number;
        }
    }

    // What stands above the shop file would win over an answer in it.
    private bool IsSaidElsewhere(string setting) => look.Said.TryGetValue(setting, out var origin) && !origin.OfShopFile;

    private string? Was(string setting) => look.Said.TryGetValue(setting, out var origin) && origin.OfShopFile ? origin.Value : null;
}
