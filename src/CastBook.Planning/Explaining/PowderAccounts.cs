using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Words;
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
            return new(PowderAccountWords.Powder, PowderAccountWords.ByChart, "", mass.Grams, "g")
            {
                Inputs = [AccountInput.By(PowderAccountWords.PowderMass, Figures.Grams(mass), SizeField(work, ShopField.Powder))],
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
            return new(PowderAccountWords.Water, PowderAccountWords.ByChart, "", water.Milliliters, "ml")
            {
                Inputs = [AccountInput.By(PowderAccountWords.WaterVolume, Figures.Millilitres(water), SizeField(work, ShopField.Water))],
            };
        }

        var ratio = inputs.WaterPer100(work);
        return new(PowderAccountWords.Water, PowderAccountWords.WaterRule, $"{Figures.Grams(mass)} × {Figures.Plain(ratio)} ÷ 100", water.Milliliters, "ml")
        {
            Inputs = [AccountInput.Reckoned(PowderAccountWords.PowderMass, Figures.Grams(mass), PowderAccountWords.PowderOfFlask), inputs.OfWater(work, ratio)],
            ValidFor = PowderAccountWords.RangeHolds,
        };
    }

    private Account Reckoned(Volume tree, FlaskWork work, Mass mass, bool weighed)
    {
        var displaced = PowderChoice.Displaced(work.Size, tree);
        var net = work.Size.Inside - displaced;
        var waste = FillVolume.Compute(work.Size.Inside, displaced) - net;
        var ratio = inputs.WaterPer100(work);
        return new(
            PowderAccountWords.Powder, PowderAccountWords.PowderRule,
            $"({Figures.Millilitres(work.Size.Inside)} − {Figures.Millilitres(displaced)} + {Figures.Millilitres(waste)}) ÷ (1 ÷ {Figures.Dense(inputs.Density)} + {Figures.Plain(ratio)} ÷ 100)",
            mass.Grams, "g")
        {
            Rounded = AccountWords.UpToStep(inputs.Unit.SayExactly(inputs.Step)),
            Inputs =
            [
                Inside(work),
                AccountInput.Reckoned(AccountWords.Tree, Figures.Millilitres(tree), weighed ? PowderAccountWords.FromWeighedTree : PowderAccountWords.EstimatedTree),
                .. work.Size.Size.Cup is { } cup ? [AccountInput.By(PowderAccountWords.Cup, Figures.Millilitres(cup), SizeField(work, ShopField.Cup))] : Array.Empty<AccountInput>(),
                PowderInputs.OfWaste(),
                inputs.OfDensity(),
                inputs.OfWater(work, ratio),
                inputs.OfStep(),
            ],
            ValidFor = PowderAccountWords.RangeHolds,
        };
    }

    private AccountInput Inside(FlaskWork work) => work.Size.Size is { Holds: { } holds }
        ? AccountInput.By(PowderAccountWords.FlaskInside, Figures.Millilitres(holds), SizeField(work, ShopField.Holds))
        : AccountInput.By(
            PowderAccountWords.FlaskInside,
            $"{inputs.Length.Say(work.Size.Size.InsideDiameter!.Value)} × {inputs.Length.Say(work.Size.Size.Height!.Value)}", SizeField(work, ShopField.InsideDiameter));

    private static Subject SizeField(FlaskWork work, string field) => new(SubjectKind.FlaskSize, work.Size.Size.Name, field);
}
