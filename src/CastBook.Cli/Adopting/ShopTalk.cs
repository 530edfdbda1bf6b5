using System.Globalization;
using CastBook.Casting.Patterns;
using CastBook.Cli.Words;
using CastBook.Planning.Rows;
using CastBook.Planning.Shops;
using CastBook.Templates;
using CastBook.Workbooks.Adopting;
using UnitsNet;

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
    private const string Diameter = "Inside diameter (mm)";
    private const string DensityColumn = "Density (g/cm³)";

    // What is neither a flask, a trunk nor a kiln in millimetres was typed in inches, or is no pattern material. Limits from memory, wide;
    // they only ask again.
    private static readonly (double, double) FlaskMm = (15, 400);
    private static readonly (double, double) TrunkMm = (2, 40);
    private static readonly (double, double) BaseMm = (2, 100);
    private static readonly (double, double) KilnMm = (80, 2000);
    private static readonly (double, double) EdgeMm = (5, 100);
    private static readonly (double, double) Density = (0.6, 2);

    private static readonly string[] Asked =
        [SettingName.WeightsAreOf, SettingName.WeightsInclude, SettingName.SupportsShare, SettingName.PatternMaterial, SettingName.CastingMethod];

    // What stands in a file is offered with no more digits than anybody measures.
    private const int Decimals = 4;

    private readonly ShopAnswers answers = new();
    private readonly ShopUnits units = look.Units;

    private string Unit => units.Length.Name;

    /// <summary>Asks, and gives what was answered.</summary>
    public ShopAnswers Ask()
    {
        prompt.Say("");
        prompt.Say(look.File is null ? QuestionWords.Begins : QuestionWords.BeginsAgain);
        Weights();
        WhereNone();
        Material();
        if (IsAsked(s => s.FlaskSizes.Count))
        {
            Choose(SettingName.CastingMethod, QuestionWords.CastingMethod);
            Flasks();
        }

        Crucible();
        Kiln();
        Alloys();
        if (!answers.IsEmpty)
        {
            NamedLines.Add(look, answers);
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

    // With a shop file, what it says can be changed; without one, what the book says is known.
    private bool IsAsked(Func<Shop, int> count) => look.File is not null || look.Shop is not { } shop || count(shop) == 0;

    private void Weights()
    {
        if (weightsToldNow || !look.SaysWhatIsWeighed)
        {
            Choose(SettingName.WeightsAreOf, QuestionWords.Weights);
        }

        if (!look.SaysGatesAreIn)
        {
            Choose(SettingName.WeightsInclude, QuestionWords.WeightsInclude);
        }

        Measure(SettingName.SupportsShare, QuestionWords.Supports, look.File?.Settings.SupportsShare?.Percent);
    }

    private void WhereNone()
    {
        if (look.WhereNone.Contains(SettingName.QuantityWhereNone))
        {
            Measure(SettingName.QuantityWhereNone, QuestionWords.QuantityWhereNone, look.File?.Settings.QuantityWhereNone);
        }

        var (alloy, was) = (SettingName.AlloyWhereNone, Was(SettingName.AlloyWhereNone));
        if (look.WhereNone.Contains(alloy) && !IsSaidElsewhere(alloy) && prompt.Words(QuestionWords.AlloyWhereNone, was) is { } named && named != was)
        {
            answers.Settings[alloy] = named;
        }
    }

    // What all of it is cast in may be such a name too, and was only just told.
    private void Alloys()
    {
        var told = answers.Settings.GetValueOrDefault(SettingName.AlloyWhereNone) as string;
        foreach (var (name, alloys) in told is null ? look.SharedNames : NamesInUse.Shared([told], look.Shop!))
        {
            Choose(SettingName.AlloyMeaning(name), QuestionWords.AlloyIs(name), alloys, Was(SettingName.AlloyMeaning(name)));
        }
    }

    private void Material()
    {
        var before = Was(SettingName.PatternMaterial);
        if (IsSaidElsewhere(SettingName.PatternMaterial) || prompt.Words(QuestionWords.Material, before) is not { } name)
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
        line.Choice("Kind", QuestionWords.MaterialKind, ["wax", "resin"], Word(was?.Kind), Word(Planning.Shops.Material.KindSaidBy(name)));
        if (line.Number(DensityColumn, QuestionWords.MaterialDensity, was?.Density?.GramsPerCubicCentimeter, Density) is null
            && line.Number("Cube weighs (g)", QuestionWords.CubeWeighs, was?.CubeMass?.Grams) is not null)
        {
            line.Number("Cube edge (mm)", QuestionWords.CubeEdge, was?.CubeEdge?.Millimeters, EdgeMm);
        }

        line.Finish(answers, was?.Name ?? name);
    }

    private static string? Word(PatternKind? kind) => kind?.ToString().ToLowerInvariant();

    private void Flasks()
    {
        foreach (var size in look.File?.FlaskSizes ?? [])
        {
            var question = size.Owned is { } owned ? QuestionWords.KeepFlask(size.Name, owned) : QuestionWords.KeepFlask(size.Name);
            if (prompt.Words(question) is { } typed && typed.Equals(QuestionWords.ChangeIt, StringComparison.OrdinalIgnoreCase))
            {
                Flask(size, prompt.Number(QuestionWords.FlaskDiameter(Unit), Unit, In(size.InsideDiameter), likely: In(FlaskMm)));
            }
        }

        while (prompt.Number(HasFlask() ? QuestionWords.NextFlask(Unit) : QuestionWords.FirstFlask(Unit), Unit, likely: In(FlaskMm)) is { } diameter)
        {
            Flask(null, diameter);
        }
    }

    private bool HasFlask() => look.File is { FlaskSizes.Count: > 0 } || answers.Lines.Any(l => l.Sheet == "Flasks");

    private void Flask(FlaskSize? was, double? diameter)
    {
        var line = new LineTalk(prompt, "Flasks", "Size", was?.Name);
        line.Put(units.Heading(Diameter), diameter, In(was?.InsideDiameter));
        var height = Measured(line, "Height (mm)", QuestionWords.FlaskHeight(Unit), was?.Height, FlaskMm);
        line.Number("Owned", QuestionWords.FlasksOwned, was?.Owned);
        Measured(line, "Sprue diameter (mm)", QuestionWords.SprueDiameter(Unit), was?.SprueDiameter, TrunkMm);
        Measured(line, "Base height (mm)", QuestionWords.BaseHeight(Unit), was?.BaseHeight, BaseMm);

        // A name that was made of the measures goes with them; one of the shop's own stays.
        line.Finish(answers, was is null || was.Name == Named(In(was.InsideDiameter), In(was.Height)) ? Named(diameter, height) : was.Name);
    }

    private static string Named(double? diameter, double? height)
    {
        static string Of(double? measure) => measure?.ToString("0.###", CultureInfo.InvariantCulture) ?? "?";
        return $"{Of(diameter)} × {Of(height)}";
    }

    private void Crucible()
    {
        if (look.Said.ContainsKey(SettingName.CrucibleHolds))
        {
            Measure(SettingName.CrucibleHolds, QuestionWords.CrucibleHolds, look.File?.Settings.CrucibleHolds?.Milliliters);
            return;
        }

        // Of several it is not said which one is meant.
        if (!IsAsked(s => s.Crucibles.Count) || look.File is { Crucibles.Count: > 1 })
        {
            return;
        }

        var was = look.File?.Crucibles.SingleOrDefault();
        var line = new LineTalk(prompt, "Crucibles", "Crucible", was?.Name);
        if (line.Number(Holds, QuestionWords.CrucibleHolds, was?.Holds?.Milliliters) is not null)
        {
            line.Finish(answers, was?.Name ?? QuestionWords.CrucibleName);
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
        if (line.Choice("Shape", QuestionWords.KilnFloor, ["square", "round"], was?.Shape is { } floor ? TypedAnswer.Word(floor) : null) is not { } shape)
        {
            return;
        }

        if (shape == "round")
        {
            Measured(line, Diameter, QuestionWords.KilnDiameter(Unit), was?.InsideDiameter, KilnMm);
        }
        else
        {
            Measured(line, "Inside width (mm)", QuestionWords.KilnWidth(Unit), was?.InsideWidth, KilnMm);
            Measured(line, "Inside depth (mm)", QuestionWords.KilnDepth(Unit), was?.InsideDepth, KilnMm);
        }

        line.Finish(answers, was?.Name ?? QuestionWords.KilnName);
    }

    private double? Measured(LineTalk line, string column, string question, Length? was, (double Least, double Most) likelyMm) =>
        line.Number(units.Heading(column), question, In(was), In(likelyMm));

    // A length of the shop file as it is offered.
    private double? In(Length? length) => length is { } some ? Math.Round(some / units.Length.One, Decimals) : null;

    // A caliper in inches shows thousandths; the limits only ask again.
    private (double Least, double Most) In((double Least, double Most) mm) =>
        (Math.Round(Length.FromMillimeters(mm.Least) / units.Length.One, 2), Math.Round(Length.FromMillimeters(mm.Most) / units.Length.One, 2));

    private void Choose(string setting, string question) =>
        Choose(setting, question, SettingGuide.Of(setting).Choices, Was(setting) is { } said ? TypedAnswer.Word(setting, said) : null);

    private void Choose(string setting, string question, IReadOnlyList<string> choices, string? was)
    {
        if (!IsSaidElsewhere(setting) && prompt.Choice(question, choices, setting, was) is { } chosen && chosen != was)
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
