using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Flasks;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Mixes;

/// <summary>Puts the flasks that are to be invested into mixes: one water ratio a mix, no more than the bowl takes, over before gloss-off.</summary>
internal sealed class MixPlanning(Settings settings, PowderChoice powder, Assumptions assumed, FindingList findings)
{
    private readonly MixRules rules = new(settings);

    /// <summary>The mixes, in the order of their first flask.</summary>
    /// <param name="flasks">The flasks of the night.</param>
    public IReadOnlyList<MixPlan> Plan(IEnumerable<FlaskPlan> flasks)
    {
        var toFill = flasks.Where(f => f.State < FlaskState.Invested && f.Fill is not null)
            .OrderBy(f => FlaskLetters.Place(f.Letter)).ThenBy(f => f.Letter, StringComparer.Ordinal).ToList();
        if (toFill.Count == 0)
        {
            return [];
        }

        if (settings.MixingBowl is not { } bowl)
        {
            findings.Add(Catalogue.MixingBowlNotKnown.At(Subject.Setting(SettingName.MixingBowl)));
            return [];
        }

        rules.Note(assumed);
        var workingTime = WorkingTime();
        var most = rules.Steps.MostFlasks(workingTime);
        if (most == 0)
        {
            findings.Add(Catalogue.WorkingTimeTooShort.At(
                new Subject(SubjectKind.Investment, powder.Row?.Name ?? "", ShopField.WorkingTime),
                powder.Row?.Name ?? PowderFindingWords.UnnamedFirst, Say.Minutes(workingTime), Say.Minutes(rules.Steps.Takes(1)), Say.Minutes(rules.Steps.Margin)));
            return [];
        }

        toFill.RemoveAll(f => IsOverBowl(f, bowl));
        var usable = Usable(bowl);
        var mixes = toFill.GroupBy(f => f.Fill!.Ratio).SelectMany(group => Pack([.. group], most, usable))
            .OrderBy(m => FlaskLetters.Place(m[0].Letter)).ThenBy(m => m[0].Letter, StringComparer.Ordinal);
        return [.. mixes.Select((m, i) => Answer(i + 1, m, workingTime))];
    }

    private Volume Usable(Volume bowl) => bowl * rules.Fill.DecimalFractions * (1 + PieceShape.Dust);

    private IEnumerable<List<FlaskPlan>> Pack(List<FlaskPlan> flasks, int most, Volume usable) =>
        MixPacking.Fewest(flasks.ConvertAll(f => f.Fill!), most, fill => powder.Mix(fill).Slurry <= usable)
            .Select(mix => mix.Select(i => flasks[i]).ToList());

    private bool IsOverBowl(FlaskPlan flask, Volume bowl)
    {
        var slurry = powder.Mix(flask.Fill!).Slurry;
        if (slurry <= Usable(bowl))
        {
            return false;
        }

        findings.Add(Catalogue.FlaskOverBowl.At(
            Subject.Flask(flask.Letter), flask.Letter, findings.Units.Water.Say(slurry), findings.Units.Water.Say(bowl), Say.Plain(rules.Fill.Percent)));
        return true;
    }

    private MixPlan Answer(int number, List<FlaskPlan> flasks, Duration workingTime)
    {
        var (mass, water, slurry) = powder.Mix(flasks.Select(f => f.Fill!).Aggregate((sum, fill) => sum.With(fill)));
        return new MixPlan
        {
            Number = number,
            Flasks = flasks.ConvertAll(f => f.Letter),
            Powder = mass,
            Water = water,
            Slurry = slurry,
            PourDoneBy = rules.Steps.PourDoneBy(workingTime),
            Takes = rules.Steps.Takes(flasks.Count),
            GlossOff = workingTime,
        };
    }

    private Duration WorkingTime()
    {
        if (powder.Row?.WorkingTime is { } own)
        {
            return own;
        }

        assumed.Once("investment-working-time", () => Catalogue.AssumedPowder.At(
            new Subject(SubjectKind.Investment, powder.Row?.Name ?? "", ShopField.WorkingTime),
            powder.Row?.Name ?? PowderFindingWords.UnnamedTitle, PowderFindingWords.UpToGlossOff(Say.Minutes(MixSteps.UsualWorkingTime)), "Working time"));
        return MixSteps.UsualWorkingTime;
    }
}
