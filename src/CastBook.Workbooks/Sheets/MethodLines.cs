using CastBook.Casting.Pouring;
using CastBook.Planning;
using CastBook.Workbooks.Words;

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
                CastingMethod.VacuumPerforated => NightPlanSheetWords.PerforatedFlasks,
                CastingMethod.VacuumSolid => NightPlanSheetWords.SolidFlasks,
                CastingMethod.Spin => NightPlanSheetWords.Spinning,
                CastingMethod.Gravity => NightPlanSheetWords.Gravity,
                _ => throw new InvalidOperationException($"Bug in CastBook: no line for {method}."),
            };
        }
    }
}
