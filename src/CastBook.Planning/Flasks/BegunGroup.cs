using CastBook.Planning.Packing;

namespace CastBook.Planning.Flasks;

/// <summary>A group that a first plan was found for.</summary>
/// <param name="solver">What goes on with it.</param>
/// <param name="whole">Makes trees of its answer.</param>
internal sealed class BegunGroup(PackSolver solver, Func<PackAnswer, GroupAnswer> whole)
{
    /// <summary>Goes on with how few flasks do.</summary>
    /// <param name="isShort">Whether it is only a look that settles most of them.</param>
    public void Count(bool isShort) => solver.Count(isShort);

    /// <summary>Goes on to the end.</summary>
    public GroupAnswer Finish() => whole(solver.Finish());
}
