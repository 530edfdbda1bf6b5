using CastBook.Casting.Investing;
using CastBook.Planning.Findings;
using CastBook.Planning.Mixes;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>How long the steps of a night take: the shop's settings, or usual minutes.</summary>
internal sealed class ClockRules(Settings settings)
{
    // Common practice, all of them: a shop with a watch has its own.
    private static readonly Duration UsualWeighing = Duration.FromMinutes(5);
    private static readonly Duration UsualCleanUp = Duration.FromMinutes(5);
    private static readonly Duration UsualBaseOff = Duration.FromMinutes(3);
    private static readonly Duration UsualLoading = Duration.FromMinutes(10);
    private static readonly Duration UsualPouring = Duration.FromMinutes(10);
    private static readonly Duration UsualQuenching = Duration.FromMinutes(3);

    /// <summary>How fast a kiln cools where its row does not say, in degrees Celsius per hour. Common practice.</summary>
    public const double UsualCooling = 100;

    /// <summary>From switching a kiln on until it has the temperature to be loaded at. Memory; small kilns are faster.</summary>
    public static Duration Preheating { get; } = Duration.FromMinutes(45);

    /// <summary>The steps of a mix.</summary>
    public MixSteps Steps { get; } = new MixRules(settings).Steps;

    /// <summary>Weighing out a mix.</summary>
    public Duration Weighing => settings.WeighingTakes ?? UsualWeighing;

    /// <summary>Cleaning bowl and tools after a mix.</summary>
    public Duration CleanUp => settings.CleanUpTakes ?? UsualCleanUp;

    /// <summary>Base off, rim cleaned and letter scratched in, of one flask.</summary>
    public Duration BaseOff => settings.BaseOffTakes ?? UsualBaseOff;

    /// <summary>Loading the kiln.</summary>
    public Duration Loading => settings.LoadingTakes ?? UsualLoading;

    /// <summary>Melting and pouring one flask.</summary>
    public Duration Pouring => settings.PouringTakes ?? UsualPouring;

    /// <summary>Quenching one flask.</summary>
    public Duration Quenching => settings.QuenchingTakes ?? UsualQuenching;

    /// <summary>How long moulds keep before the kiln.</summary>
    public Duration MouldsKeep => MouldKeeping.AtMost(settings.KeptDamp == true);

    /// <summary>Steam, where the shop does it.</summary>
    public Duration Steam => settings.SteamDewax ?? Duration.Zero;

    /// <summary>A part of the night with who must be there for each of its steps.</summary>
    /// <param name="steps">Its steps.</param>
    public NightPart Staffed(IReadOnlyList<ClockStep> steps) => settings.TwoPeopleFor.Count + settings.StayWith.Count == 0 ? new(steps)
        : new([.. steps.Select(s => s with { TwoPeople = settings.TwoPeopleFor.Contains(s.Kind), Watched = settings.StayWith.Contains(s.Kind) })]);

    /// <summary>Notes the usual minutes that a night relies on.</summary>
    /// <param name="assumed">Takes the notes.</param>
    public void Note(Assumptions assumed)
    {
        Unless(settings.WeighingTakes, SettingName.WeighingTakes, UsualWeighing);
        Unless(settings.CleanUpTakes, SettingName.CleanUpTakes, UsualCleanUp);
        Unless(settings.BaseOffTakes, SettingName.BaseOffTakes, UsualBaseOff);
        Unless(settings.LoadingTakes, SettingName.LoadingTakes, UsualLoading);
        Unless(settings.PouringTakes, SettingName.PouringTakes, UsualPouring);
        Unless(settings.QuenchingTakes, SettingName.QuenchingTakes, UsualQuenching);

        void Unless(Duration? said, string name, Duration usual)
        {
            if (said is null)
            {
                assumed.Use(name, Say.Minutes(usual));
            }
        }
    }
}
