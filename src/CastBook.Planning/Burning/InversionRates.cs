using CastBook.Casting.Burnout;
using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Investing;
using CastBook.Planning.Shops;
using CastBook.Planning.Words;

namespace CastBook.Planning.Burning;

/// <summary>Whether a kiln takes its moulds too fast through the temperatures at which their silica turns over.</summary>
/// <param name="shop">The shop.</param>
/// <param name="findings">Takes what is found.</param>
internal sealed class InversionRates(Shop shop, FindingList findings)
{
    // Rates are typed to some degrees; half a degree is no excess.
    private const double RoundingDegrees = 0.5;

    private readonly Investment? powder = PowderChoice.InUse(shop);

    /// <summary>Looks at a schedule as its kiln runs it.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="stages">Its stages as run.</param>
    public void Look(BurnoutSchedule schedule, IReadOnlyList<ProgramStage> stages)
    {
        if (powder?.Kind == InvestmentKind.HighTemperature && powder.InversionDegreesPerHour is null)
        {
            // Its shells bear more, and nobody has published how much.
            return;
        }

        foreach (var stage in stages)
        {
            foreach (var inversion in SilicaInversion.Of(powder?.Silica ?? Silica.Both).Where(i => i.LiesBetween(stage.From, stage.Target)))
            {
                Look(schedule, stage, inversion);
            }
        }
    }

    private void Look(BurnoutSchedule schedule, ProgramStage stage, SilicaInversion inversion)
    {
        var subject = new Subject(SubjectKind.Schedule, schedule.Name, ShopField.Rate);
        var (from, to, silica) = (findings.Units.Temperature.Say(stage.From), findings.Units.Temperature.Say(stage.Target), Said(inversion));
        double? rate = stage.WayInHold ? null : Math.Abs(stage.Target.DegreesCelsius - stage.From.DegreesCelsius) / stage.Way.Hours;
        if (powder?.InversionDegreesPerHour is not { } limit)
        {
            if (rate > SilicaInversion.FastestPublishedDegreesPerHour + RoundingDegrees)
            {
                findings.Add(Catalogue.InversionFasterThanPublished.At(
                    subject, schedule.Name, from, to, Rate(rate.Value), silica, Rate(SilicaInversion.FastestPublishedDegreesPerHour)));
            }
        }
        else if (rate is null)
        {
            findings.Add(Catalogue.InversionRateNotSet.At(subject, schedule.Name, from, to, silica, $"\"{powder.Name}\"", Rate(limit)));
        }
        else if (rate > limit + RoundingDegrees)
        {
            findings.Add(Catalogue.InversionTooFast.At(subject, schedule.Name, from, to, Rate(rate.Value), silica, $"\"{powder.Name}\"", Rate(limit)));
        }
    }

    private string Said(SilicaInversion inversion)
    {
        var name = inversion.Silica == Silica.Quartz ? BurnoutFindingWords.Quartz : BurnoutFindingWords.Cristobalite;
        return inversion.IsPoint
            ? BurnoutFindingWords.TurnsOverAt(name, findings.Units.Temperature.Say(inversion.From))
            : BurnoutFindingWords.TurnsOverBetween(name, findings.Units.Temperature.Say(inversion.From), findings.Units.Temperature.Say(inversion.To));
    }

    private string Rate(double degreesPerHour) => $"{findings.Units.Temperature.SayDegrees(degreesPerHour)}/h";
}
