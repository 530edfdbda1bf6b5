using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How a flask's powder and water came to be.</summary>
/// <param name="inputs">The numbers of the investment in use.</param>
internal sealed class PowderAccounts(PowderInputs inputs)
{
    /// <summary>The powder; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    public Account? Powder(FlaskPlan plan, FlaskWork work)
    {
        if (plan.Powder is not { } mass)
        {
            return null;
        }

        if (work.Size.Size.Powder is not null)
        {
            return new("Powder", "as the shop's chart for this flask size says", "", mass.Grams, "g")
            {
                Inputs = [AccountInput.By("powder", Figures.Grams(mass), SizeField(work, ShopField.Powder))],
            };
        }

        return Reckoned(plan.Tree, work, mass, plan.Weighed);
    }

    /// <summary>The water; nothing where it is not known.</summary>
    /// <param name="plan">The flask as answered.</param>
    /// <param name="work">The flask as settled.</param>
    public Account? Water(FlaskPlan plan, FlaskWork work)
    {
        if (plan is not { Powder: { } mass, Water: { } water })
        {
            return null;
        }

        if (work.Size.Size is { Powder: not null, Water: not null })
        {
            return new("Water", "as the shop's chart for this flask size says", "", water.Milliliters, "ml")
            {
                Inputs = [AccountInput.By("water", Figures.Millilitres(water), SizeField(work, ShopField.Water))],
            };
        }

        var ratio = inputs.WaterPer100(work);
        return new("Water", "powder × water per 100 ÷ 100", $"{Figures.Grams(mass)} × {Figures.Plain(ratio)} ÷ 100", water.Milliliters, "ml")
        {
            Inputs = [AccountInput.Reckoned("powder", Figures.Grams(mass), "the powder of the same flask, as rounded"), inputs.OfWater(work, ratio)],
            ValidFor = PowderInputs.Range,
        };
    }

    private Account Reckoned(Volume tree, FlaskWork work, Mass mass, bool weighed)
    {
        var displaced = PowderChoice.Displaced(work.Size, tree);
        var net = work.Size.Inside - displaced;
        var waste = FillVolume.Compute(work.Size.Inside, displaced) - net;
        var ratio = inputs.WaterPer100(work);
        return new(
            "Powder", "(flask inside − tree and cup + waste) ÷ (1 ÷ powder density + water per 100 ÷ 100)",
            $"({Figures.Millilitres(work.Size.Inside)} − {Figures.Millilitres(displaced)} + {Figures.Millilitres(waste)}) ÷ (1 ÷ {Figures.Dense(inputs.Density)} + {Figures.Plain(ratio)} ÷ 100)",
            mass.Grams, "g")
        {
            Rounded = $"up to a whole step of {inputs.Unit.SayExactly(inputs.Step)}",
            Inputs =
            [
                Inside(work),
                AccountInput.Reckoned("tree", Figures.Millilitres(tree), weighed ? "from the weighed tree" : "pieces, gates and trunk, estimated"),
                .. work.Size.Size.Cup is { } cup ? [AccountInput.By("cup", Figures.Millilitres(cup), SizeField(work, ShopField.Cup))] : Array.Empty<AccountInput>(),
                PowderInputs.OfWaste(),
                inputs.OfDensity(),
                inputs.OfWater(work, ratio),
                inputs.OfStep(),
            ],
            ValidFor = PowderInputs.Range,
        };
    }

    private AccountInput Inside(FlaskWork work) => work.Size.Size is { Holds: { } holds }
        ? AccountInput.By("flask inside", Figures.Millilitres(holds), SizeField(work, ShopField.Holds))
        : AccountInput.By(
            "flask inside", $"{inputs.Length.Say(work.Size.Size.InsideDiameter!.Value)} × {inputs.Length.Say(work.Size.Size.Height!.Value)}", SizeField(work, ShopField.InsideDiameter));

    private static Subject SizeField(FlaskWork work, string field) => new(SubjectKind.FlaskSize, work.Size.Size.Name, field);
}
