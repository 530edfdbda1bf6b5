using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Settings;

namespace CastBook.Workbooks.Adopting;

/// <summary>Answers as people type them: in their own words, with a unit or without.</summary>
public static class TypedAnswer
{
    /// <summary>A number in the unit asked for; null where it is none, or may mean two things, as <c>1,150</c> does.</summary>
    /// <param name="typed">What was typed, such as <c>9,2</c> or <c>100 mm</c>.</param>
    /// <param name="unit">The unit asked for; empty for a count.</param>
    public static double? Number(string typed, string unit)
    {
        if (!CellUnit.TryParse(unit, out var asked))
        {
            return NumberText.ReadCount(typed, NumberSigns.None) is { Outcome: NumberOutcome.Read, Unit: null } count ? count.Value : null;
        }

        return NumberText.Read(typed, NumberSigns.None) switch
        {
            { Outcome: not NumberOutcome.Read } => null,
            { Unit: null } plain => plain.Value,
            { Unit: { } own } number when own.Dimension == asked.Dimension && !own.IsGramOrGrain => asked.FromBase(own.ToBase(number.Value)),
            _ => null,
        };
    }

    /// <summary>The word of a question's choices that is meant; null where none is.</summary>
    /// <param name="question">The setting, or <see cref="ShopField.Kind"/> or <see cref="ShopField.Shape"/>.</param>
    /// <param name="typed">What was typed, in any of the languages whose headings are known.</param>
    public static string? Word(string question, string typed) => question switch
    {
        SettingName.WeightsAreOf => ShopWords.Meaning(typed) switch
        {
            WeightMeaning.Pattern => "pattern",
            WeightMeaning.FinishedMetal => "finished metal",
            _ => null,
        },
        SettingName.WeightsInclude => ShopWords.IncludesGates(typed) is { } gates ? gates ? "gates too" : "piece alone" : null,
        SettingName.CastingMethod => ShopWords.Method(typed) switch
        {
            Casting.Pouring.CastingMethod.VacuumPerforated => "vacuum perforated",
            Casting.Pouring.CastingMethod.VacuumSolid => "vacuum solid",
            Casting.Pouring.CastingMethod.Spin => "spin",
            Casting.Pouring.CastingMethod.Gravity => "gravity",
            _ => null,
        },
        ShopField.Kind => ShopWords.Kind(typed) switch
        {
            Casting.Patterns.PatternKind.Wax => "wax",
            Casting.Patterns.PatternKind.Resin => "resin",
            _ => null,
        },
        ShopField.Shape => ShopWords.Shape(typed) is { } shape ? Word(shape) : null,
        _ => null,
    };

    /// <summary>The word of the choices for the shape of a kiln's floor.</summary>
    /// <param name="shape">The shape.</param>
    public static string Word(KilnShape shape) => shape == KilnShape.Round ? "round" : "square";
}
