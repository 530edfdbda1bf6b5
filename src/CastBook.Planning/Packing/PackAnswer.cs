namespace CastBook.Planning.Packing;

/// <summary>A plan and what it is worth.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="LeastCost">What any plan that places everything costs at least.</param>
/// <param name="LeastFlasks">How many flasks any plan that places everything takes at least.</param>
internal sealed record PackAnswer(PackPlan Plan, long LeastCost, int LeastFlasks)
{
    /// <summary>Whether it is proved that no plan is cheaper.</summary>
    public bool IsCheapest => Plan.Lost == 0 && Plan.Cost <= LeastCost;
}
