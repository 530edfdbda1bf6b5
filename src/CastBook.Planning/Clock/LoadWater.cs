using CastBook.Casting.Burnout;
using CastBook.Planning.Findings;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Whether a kiln can drive the water out of its load by the end of the first stage, were nothing lost.</summary>
/// <remarks>
/// All water of the mix leaves the mould in the end; bound water takes more heat than free water, and powder, flasks and kiln
/// take theirs. So a kiln that is too weak by this is too weak; one that is not may be so still.
/// </remarks>
/// <param name="findings">Takes what is found.</param>
internal sealed class LoadWater(FindingList findings)
{
    // From 20 °C to steam at 100 °C: 4.18 kJ/(kg K) and 2,257 kJ/kg, tables of water.
    private const double KilojoulesPerKilogram = (4.18 * 80) + 2257;
    private const double KilojoulesPerKilowattHour = 3600;

    // Less than this any kiln dries while it warms up.
    private const double FewKilograms = 1;

    /// <summary>Looks at a load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="kiln">Its kiln.</param>
    /// <param name="flasks">Its flasks.</param>
    /// <param name="asksPower">Whether the kiln's power is asked for where it is missing.</param>
    public void Look(KilnLoad load, Kiln kiln, IEnumerable<FlaskPlan> flasks, bool asksPower)
    {
        var kilograms = flasks.Sum(f => f.Water?.Liters ?? 0);
        var first = KilnProgram.Of(load.Schedule, load.CoolsDegreesPerHour)[0].Takes;
        var needed = kilograms * KilojoulesPerKilogram / KilojoulesPerKilowattHour;
        if (kiln.Power is not { } power)
        {
            if (asksPower && kilograms >= FewKilograms && kiln.Name.Length > 0)
            {
                findings.Add(Catalogue.KilnPowerNotKnown.At(new Subject(SubjectKind.Kiln, kiln.Name, ShopField.Power), Say.Count(load.Number), Kilograms(kilograms)));
            }

            return;
        }

        var kilowatts = (double)power.Kilowatts;
        var given = kilowatts * first.Hours;
        if (needed > given)
        {
            findings.Add(Catalogue.KilnTooWeakToDry.At(
                new Subject(SubjectKind.Kiln, kiln.Name, ShopField.Power), Say.Count(load.Number), Kilograms(kilograms), Say.Plain(Math.Round(needed, 1)), kiln.Name,
                Say.Plain(Math.Round(given, 1)), Say.Hours(Duration.FromMinutes(Math.Ceiling(needed / kilowatts * 4) * 15))));
        }
    }

    private static string Kilograms(double kilograms) => $"{Say.Plain(Math.Round(kilograms, 1))} kg";
}
