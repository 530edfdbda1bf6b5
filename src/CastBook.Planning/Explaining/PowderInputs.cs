using CastBook.Casting.Investing;
using CastBook.Casting.Patterns;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>Numbers of the investment in use with where each comes from.</summary>
/// <param name="settings">The shop's settings.</param>
/// <param name="powder">The investment in use.</param>
internal sealed class PowderInputs(Settings settings, PowderChoice powder)
{
    /// <summary>The density of its grains.</summary>
    public Density Density => powder.Row?.PowderDensity ?? PowderAndWater.UsualPowderDensity;

    /// <summary>The step to which powder is weighed.</summary>
    public Mass Step => powder.Step;

    /// <summary>The unit in which powder is written.</summary>
    public WrittenMass Unit => settings.Units.Powder;

    /// <summary>The unit of lengths.</summary>
    public WrittenLength Length => settings.Units.Length;

    /// <summary>The density with its source.</summary>
    public AccountInput OfDensity() =>
        Of(PowderAccountWords.PowderDensity, Figures.Dense(Density), ShopField.PowderDensity, powder.Row?.PowderDensity is not null, PowderAccountWords.BetweenComponents);

    /// <summary>The step with its source.</summary>
    public AccountInput OfStep() => AccountInput.Setting(
        SettingName.PowderStep, Unit.SayExactly(settings.PowderStep ?? Step), settings.PowderStep is not null, AccountWords.CommonPractice);

    /// <summary>What stays in the bowl.</summary>
    public static AccountInput OfWaste() =>
        AccountInput.BuiltIn(
            PowderAccountWords.Waste, PowderAccountWords.WasteShare(Say.Percent(FillVolume.WasteShare), Figures.Millilitres(FillVolume.LeastWaste)), PowderAccountWords.FromMemory);

    /// <summary>Parts of water to 100 of powder, by the powder and what is in the mould.</summary>
    /// <param name="work">A flask.</param>
    public double WaterPer100(FlaskWork work) => powder.Row?.WaterPer100 ?? PowderAndWater.UsualWaterPer100(work.Kind);

    /// <summary>The water ratio with its source.</summary>
    /// <param name="work">A flask.</param>
    /// <param name="ratio">The ratio it is mixed to.</param>
    public AccountInput OfWater(FlaskWork work, double ratio) => work.Size.Size is { Powder: not null, Water: not null }
        ? AccountInput.By(PowderAccountWords.WaterPer100, Figures.Plain(ratio), new Subject(SubjectKind.FlaskSize, work.Size.Size.Name, ShopField.Water))
        : Of(
            PowderAccountWords.WaterPer100, Figures.Plain(ratio), ShopField.WaterPer100, powder.Row?.WaterPer100 is not null,
            work.Kind == PatternKind.Wax ? PowderAccountWords.PracticeForWax : PowderAccountWords.PracticeForResin);

    /// <summary>The working time with its source.</summary>
    /// <param name="time">The working time.</param>
    public AccountInput OfWorkingTime(Duration time) =>
        Of(PowderAccountWords.WorkingTime, Say.Minutes(time), ShopField.WorkingTime, powder.Row?.WorkingTime is not null, AccountWords.NotesOfPractitioners);

    private AccountInput Of(string name, string value, string field, bool typed, string source) => typed
        ? AccountInput.By(name, value, new Subject(SubjectKind.Investment, powder.Row!.Name, field))
        : AccountInput.BuiltIn(name, value, source);
}
