using CastBook.Casting.Burnout;
using CastBook.Casting.Heat;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>The cores of a load's moulds in one kiln, each size in its slow case.</summary>
/// <param name="cores">For each size its flasks and their core, the slowest first.</param>
/// <param name="toleranceDegrees">How near a core must be to the kiln, in degrees Celsius.</param>
internal sealed class LoadCores(IReadOnlyList<(IReadOnlyList<string> Flasks, CoreTrace Core)> cores, double toleranceDegrees)
{
    /// <summary>Runs a stage.</summary>
    /// <param name="stage">The stage.</param>
    public void Run(ProgramStage stage)
    {
        foreach (var (_, core) in cores)
        {
            core.Run(stage);
        }
    }

    /// <summary>Goes to a kiln temperature in a straight line.</summary>
    /// <param name="target">Kiln temperature.</param>
    /// <param name="way">How long it takes.</param>
    public void Go(Temperature target, Duration way)
    {
        foreach (var (_, core) in cores)
        {
            core.Go(target, way);
        }
    }

    /// <summary>Holds the kiln where it is.</summary>
    /// <param name="hold">How long.</param>
    public void Hold(Duration hold)
    {
        foreach (var (_, core) in cores)
        {
            core.Hold(hold);
        }
    }

    /// <summary>How long the kiln must hold until the cores of some moulds have followed it, and the one that needs longest.</summary>
    /// <param name="flasks">The moulds, by letter; at least one is in the load.</param>
    public (Duration Hold, string Slowest) HoldOf(IReadOnlyList<string> flasks)
    {
        (Duration Hold, string Slowest)? longest = null;
        foreach (var (own, core) in cores)
        {
            if (own.FirstOrDefault(flasks.Contains) is { } flask && core.HoldUntilWithin(toleranceDegrees) is var hold && !(longest?.Hold >= hold))
            {
                longest = (hold, flask);
            }
        }

        return longest!.Value;
    }
}
