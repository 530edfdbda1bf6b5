namespace CastBook.Planning.Packing.Fitting;

/// <summary>A tree on its way.</summary>
/// <param name="Type">The place of its size and setting.</param>
/// <param name="Angle">The angle that is free.</param>
/// <param name="Metal">The metal it still takes.</param>
/// <param name="Last">The sector that was hung last; nothing on an empty tree.</param>
internal sealed record FitTree(int Type, int Angle, long Metal, FitSector? Last)
{
    /// <summary>A plan of trees; those on which nothing hangs are left out.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="types">The sizes and settings.</param>
    /// <param name="trees">The trees.</param>
    public static PackPlan Plan(PackProblem problem, SectorType[] types, FitTree[] trees)
    {
        var plan = PackPlan.Empty(problem);
        foreach (var tree in trees.Where(t => t.Last is not null))
        {
            plan.Add(PackedFlask.Of(problem, types[tree.Type].Size, [.. tree.Sectors()]));
        }

        return plan;
    }

    /// <summary>Its sectors, the first first.</summary>
    public IEnumerable<PackCount[]> Sectors()
    {
        var sectors = new Stack<PackCount[]>();
        for (var sector = Last; sector is not null; sector = sector.Before)
        {
            sectors.Push(sector.Content);
        }

        return sectors;
    }
}

/// <summary>A sector of a tree.</summary>
/// <param name="Content">What hangs in it, from the button up.</param>
/// <param name="Before">The sector that was hung before.</param>
internal sealed record FitSector(PackCount[] Content, FitSector? Before);

/// <summary>A sector that may be hung next.</summary>
/// <param name="Tree">The tree.</param>
/// <param name="Width">The angle it takes.</param>
/// <param name="Sector">What hangs in it.</param>
/// <param name="Spare">What it leaves beyond what the rest is worth.</param>
internal readonly record struct FitWay(int Tree, int Width, PackCount[] Sector, long Spare);
