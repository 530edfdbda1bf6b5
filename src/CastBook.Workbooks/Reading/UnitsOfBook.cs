using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using CastBook.Workbooks.Reading.Headings;
using CastBook.Workbooks.Reading.Pieces;
using CastBook.Workbooks.Reading.Values;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reading;

/// <summary>The units of answers that nobody has named: those in which the book's own columns stand, where all of them stand in one.</summary>
internal static class UnitsOfBook
{
    private static readonly string[] Sizes =
    [
        PieceField.Length, PieceField.Width, PieceField.Thickness, PieceField.Sizes, PieceField.FinestSection, PieceField.HeaviestSection,
        PieceField.GateDiameter, PieceField.GateLength,
    ];

    private static readonly string[] Powders = [ShopField.Powder, ShopField.InStock];

    /// <summary>The settings with these units, each said once.</summary>
    /// <param name="settings">The settings as said.</param>
    /// <param name="lists">The lists of pieces.</param>
    /// <param name="ofShop">The columns of the shop's sheets.</param>
    /// <param name="findings">Takes what is said.</param>
    public static Planning.Shops.Settings Fill(Planning.Shops.Settings settings, IReadOnlyList<ListReading> lists, IReadOnlyList<FieldColumn> ofShop, List<Finding> findings)
    {
        var own = lists.SelectMany(l => l.Fields).ToList();
        if (settings.MetalIn is null && Metal(lists) is { } metal)
        {
            Say(SettingName.MetalIn, OriginWords.UnitOfWeights(metal.Name));
            settings = settings with { MetalIn = metal };
        }

        if (settings.PowderIn is null && Named(ofShop.Where(c => Powders.Contains(c.Field))) is { } sign
            && WrittenMass.OfPowder.FirstOrDefault(u => u.Name == sign) is { IsGrams: false } powder)
        {
            Say(SettingName.PowderIn, OriginWords.UnitOfPowder(powder.Name));
            settings = settings with { PowderIn = powder };
        }

        var inInches = Named(own.Where(c => Sizes.Contains(c.Field))) == WrittenLength.Inch.Name;
        if (settings.LengthsIn is null && inInches)
        {
            Say(SettingName.LengthsIn, OriginWords.UnitOfSizes(WrittenLength.Inch.Name));
            settings = settings with { LengthsIn = WrittenLength.Inch };
        }

        var temperatures = Named(own.Concat(ofShop).Where(c => c.Unit?.Dimension == Dimension.Temperature));
        if (settings.TemperaturesIn is null && (temperatures ?? (inInches ? WrittenTemperature.Fahrenheit.Name : null)) == WrittenTemperature.Fahrenheit.Name)
        {
            var fahrenheit = WrittenTemperature.Fahrenheit.Name;
            Say(SettingName.TemperaturesIn, inInches ? OriginWords.UnitAsSizes(fahrenheit) : OriginWords.UnitOfTemperatures(fahrenheit));
            settings = settings with { TemperaturesIn = WrittenTemperature.Fahrenheit };
        }

        return settings;

        void Say(string setting, string unitAndWhy) =>
            findings.Add(Catalogue.AssumedDefault.At(Subject.Setting(setting), setting, unitAndWhy));
    }

    private static WrittenMass? Metal(IReadOnlyList<ListReading> lists) =>
        lists.Select(l => l.GramsOfWeightUnit).Distinct().ToList() is [{ } grams]
            ? WrittenMass.OfMetal.FirstOrDefault(u => !u.IsGrams && SeenUnit.IsNear(grams, u.One.Grams))
            : null;

    // The one unit that headings name; nothing where they name none, or several.
    private static string? Named(IEnumerable<FieldColumn> columns) =>
        columns.Select(c => c.Unit?.Name).OfType<string>().Distinct().ToList() is [var only] ? only : null;
}
