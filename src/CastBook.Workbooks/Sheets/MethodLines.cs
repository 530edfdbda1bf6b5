using CastBook.Casting.Pouring;
using CastBook.Planning;

namespace CastBook.Workbooks.Sheets;

/// <summary>What the bench must see to for each way of casting that the night uses.</summary>
internal static class MethodLines
{
    /// <summary>A line for each way of casting, in a fixed order.</summary>
    /// <param name="plan">The night as answered.</param>
    public static IEnumerable<string> Of(NightPlan plan)
    {
        var used = plan.Flasks.Where(f => f.State < FlaskState.Poured).Select(f => f.Method).ToHashSet();
        foreach (var method in Enum.GetValues<CastingMethod>().Where(used.Contains))
        {
            yield return method switch
            {
                CastingMethod.VacuumPerforated => "Perforated flasks: the sleeve stays on while investing and comes off before the kiln; the gasket of the vacuum chamber is whole and seals under the flange.",
                CastingMethod.VacuumSolid => "Solid flasks: the rim is scraped clean so that it seals on the pad, and the mould is open to the pad at its foot.",
                CastingMethod.Spin => "Spinning: balance the arm with the flask and charge of this line before it is wound, stand clear behind the guard.",
                _ => throw new InvalidOperationException($"Bug in CastBook: no line for {method}."),
            };
        }
    }
}
