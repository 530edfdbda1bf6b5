using UnitsNet;

namespace CastBook.Casting.Burnout;

/// <summary>A burnout: stages one after the other, the last of them at the temperature of casting.</summary>
/// <remarks>
/// <para><b>Formula.</b> t = Σ hold + Σ |ΔT| / rate, the second sum over the stages that give a rate.</para>
/// <para><b>Valid for</b> kilns that follow the schedule. A stage without a rate has its way inside its hold,
/// as printed schedules count.</para>
/// <para><b>Source.</b> The published schedules' own sums of 6, 8 and 12 h, and a published programme of 11 h.</para>
/// </remarks>
public sealed record BurnoutSchedule
{
    /// <summary>Room temperature, from which a kiln starts when nothing else is said.</summary>
    public static Temperature ColdKiln { get; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Makes a schedule.</summary>
    /// <param name="name">What the shop calls it.</param>
    /// <param name="loadAt">Kiln temperature at which the flasks go in; missing means a cold kiln.</param>
    /// <param name="stages">The stages in order; at least one.</param>
    /// <exception cref="ArgumentException">There is no stage.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A hold is negative, or a rate is zero, negative or not finite.</exception>
    public BurnoutSchedule(string name, Temperature? loadAt, IReadOnlyList<BurnoutStage> stages)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(stages);
        Check(stages);

        Name = name;
        LoadAt = loadAt;
        Stages = stages;
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>Kiln temperature at which the flasks go in; missing means a cold kiln.</summary>
    public Temperature? LoadAt { get; }

    /// <summary>The stages in order; at least one.</summary>
    public IReadOnlyList<BurnoutStage> Stages { get; }

    /// <summary>The hottest target.</summary>
    public Temperature Top => Temperature.FromDegreesCelsius(Stages.Max(stage => stage.Target.DegreesCelsius));

    /// <summary>From loading to the end of the last hold.</summary>
    public Duration Total
    {
        get
        {
            var hours = 0.0;
            var from = LoadAt ?? ColdKiln;
            foreach (var stage in Stages)
            {
                hours += stage.Hold.Hours;
                if (stage.RateDegreesPerHour is { } rate)
                {
                    hours += Math.Abs(stage.Target.DegreesCelsius - from.DegreesCelsius) / rate;
                }

                from = stage.Target;
            }

            return Duration.FromHours(hours);
        }
    }

    /// <summary>The same schedule with its last stage at another temperature: that of the flask to be cast.</summary>
    /// <param name="flask">Flask temperature at casting.</param>
    /// <returns>The schedule; holds and rates are the same.</returns>
    public BurnoutSchedule EndingAt(Temperature flask) =>
        new(Name, LoadAt, [.. Stages.SkipLast(1), Stages[^1] with { Target = flask }]);

    private static void Check(IReadOnlyList<BurnoutStage> stages)
    {
        if (stages.Count == 0)
        {
            throw new ArgumentException("A schedule needs at least one stage.", nameof(stages));
        }

        foreach (var stage in stages)
        {
            if (stage.Hold.Value < 0 || (stage.RateDegreesPerHour is { } rate && !(double.IsFinite(rate) && rate > 0)))
            {
                throw new ArgumentOutOfRangeException(nameof(stages), "A hold is never negative, and a rate is more than zero.");
            }
        }
    }
}
