using CastBook.Casting.Trees;
using CastBook.Planning.Metals;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Flasks;

/// <summary>How a charge is made up: button, melt loss and step, from the shop's settings or usual values.</summary>
internal sealed class ChargeRules(Settings settings)
{
    // A cup is filled to four fifths at most, so that the melt stays below the rim. Common practice.
    private const double CupFill = 0.8;

    private readonly Ratio share = settings.ButtonShare ?? Button.UsualShare;
    private readonly Volume least = settings.ButtonAtLeast ?? Button.UsualLeast;
    private readonly Mass step = StepOf(settings);

    /// <summary>The step charges are rounded up to.</summary>
    /// <param name="settings">The shop's settings.</param>
    public static Mass StepOf(Settings settings) => settings.Units.Metal.Step(settings.ChargeStep);

    /// <summary>What an alloy loses in melting.</summary>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="alloy">The alloy.</param>
    public static Ratio LossOf(Settings settings, KnownAlloy alloy) => alloy.Row?.Loss ?? settings.MeltLoss ?? Charge.UsualLoss;

    /// <summary>The button of so much metal.</summary>
    /// <param name="piecesAndTree">Volume of pieces and tree.</param>
    public Volume ButtonOf(Volume piecesAndTree) => Button.Volume(piecesAndTree, share, least);

    /// <summary>The charge to weigh out.</summary>
    /// <param name="piecesAndTree">Volume of pieces and tree.</param>
    /// <param name="alloy">An alloy with a density.</param>
    public Mass ChargeOf(Volume piecesAndTree, KnownAlloy alloy)
    {
        var density = alloy.Density!.Value;
        return Charge.Compute(piecesAndTree * density, Mass.Zero, ButtonOf(piecesAndTree) * density, LossOf(alloy), step);
    }

    /// <summary>The most of pieces and tree that a crucible can pour, button, loss and rounding counted; may be negative.</summary>
    /// <param name="usable">What the crucible takes.</param>
    /// <param name="alloy">An alloy with a density.</param>
    public Volume MostFor(Volume usable, KnownAlloy alloy)
    {
        var density = alloy.Density!.Value;
        var charge = Math.Floor((usable * density / step) + PieceShape.Dust) * step;
        var total = charge / density / (1 + LossOf(alloy).DecimalFractions);
        return UnitMath.Min(total - least, total / (1 + share.DecimalFractions)) * (1 - PieceShape.Dust);
    }

    /// <summary>The most of pieces and tree whose button fits a cup; negative when not even the least button does.</summary>
    /// <param name="cup">What the cup holds.</param>
    public Volume MostForCup(Volume cup)
    {
        var fill = cup * CupFill;
        return least > fill ? Volume.FromMilliliters(-1)
            : share <= Ratio.Zero ? Volume.FromLiters(1000)
            : fill / share.DecimalFractions * (1 - PieceShape.Dust);
    }

    /// <summary>Whether a button fits a cup.</summary>
    /// <param name="button">The button.</param>
    /// <param name="cup">What the cup holds.</param>
    public static bool Fits(Volume button, Volume cup) => button <= cup * CupFill * (1 + PieceShape.Dust);

    /// <summary>Notes the usual values that a flask of an alloy relied on.</summary>
    /// <param name="alloy">The alloy.</param>
    /// <param name="assumed">Takes the notes.</param>
    public void Note(KnownAlloy alloy, Assumptions assumed)
    {
        Unless(settings.ButtonShare is not null, SettingName.ButtonShare, Findings.Say.Percent(Button.UsualShare));
        Unless(settings.ButtonAtLeast is not null, SettingName.ButtonAtLeast, settings.Units.Water.SayFinely(Button.UsualLeast));
        Unless(settings.MeltLoss is not null || alloy.Row?.Loss is not null, SettingName.MeltLoss, Findings.Say.Percent(Charge.UsualLoss));
        Unless(settings.ChargeStep is not null, SettingName.ChargeStep, settings.Units.Metal.SayExactly(step));

        void Unless(bool said, string name, string value)
        {
            if (!said)
            {
                assumed.Use(name, value);
            }
        }
    }

    private Ratio LossOf(KnownAlloy alloy) => LossOf(settings, alloy);
}
