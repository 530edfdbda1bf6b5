using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Mixes;

/// <summary>How a mix is made: bowl and steps, from the shop's settings or usual values.</summary>
internal sealed class MixRules(Settings settings)
{
    // Slurry about doubles in height under vacuum. Common practice.
    private static readonly Ratio UsualFill = Ratio.FromPercent(50);

    /// <summary>How full the bowl may be.</summary>
    public Ratio Fill => settings.BowlFill ?? UsualFill;

    /// <summary>The steps.</summary>
    public MixSteps Steps { get; } = new(
        settings.MixingTakes ?? MixSteps.Usual.Mixing,
        settings.BowlVacuum ?? MixSteps.Usual.BowlVacuum,
        settings.FlaskFilling ?? MixSteps.Usual.Filling,
        settings.FlaskVacuum ?? MixSteps.Usual.FlaskVacuum,
        settings.GlossOffMargin ?? MixSteps.Usual.Margin);

    /// <summary>Notes the usual values that a mix relies on.</summary>
    /// <param name="assumed">Takes the notes.</param>
    public void Note(Assumptions assumed)
    {
        Unless(settings.BowlFill is not null, SettingName.BowlFill, Say.Percent(UsualFill));
        Unless(settings.MixingTakes is not null, SettingName.MixingTakes, Say.Minutes(MixSteps.Usual.Mixing));
        Unless(settings.BowlVacuum is not null, SettingName.BowlVacuum, Say.Minutes(MixSteps.Usual.BowlVacuum));
        Unless(settings.FlaskFilling is not null, SettingName.FlaskFilling, Say.Minutes(MixSteps.Usual.Filling));
        Unless(settings.FlaskVacuum is not null, SettingName.FlaskVacuum, Say.Minutes(MixSteps.Usual.FlaskVacuum));
        Unless(settings.GlossOffMargin is not null, SettingName.GlossOffMargin, Say.Minutes(MixSteps.Usual.Margin));

        void Unless(bool said, string name, string value)
        {
            if (!said)
            {
                assumed.Use(name, value);
            }
        }
    }
}
