using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Staying;

/// <summary>A tree of a chosen flask, which may have more in it than hangs there.</summary>
internal sealed class CrowdedTree
{
    private readonly int[] stood;
    private readonly int[] counts;
    private readonly long mostMetal;

    /// <summary>An empty tree.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="size">The flask's size.</param>
    /// <param name="setting">Its setting.</param>
    /// <param name="stood">How many of each piece stood in it.</param>
    public CrowdedTree(PackProblem problem, int size, int setting, int[] stood)
    {
        (this.stood, counts, mostMetal) = (stood, new int[stood.Length], problem.Sizes[size].Metal);
        (Size, Rod, Shapes, Ranks) = (size, problem.Sizes[size].Rod, problem.Shapes[size], new int[stood.Length]);
        Array.Fill(Ranks, -1);
        var thinnest = PackShape.Turn;
        for (var rank = 0; rank < problem.ByTail[size].Length; rank++)
        {
            var item = problem.ByTail[size][rank];
            if (problem.Items[item].MayBeCastAt(setting))
            {
                (Ranks[item], thinnest) = (rank, Math.Min(thinnest, Shapes[item].Theta));
            }
        }

        // One more than hang side by side: a tree that is too full may have that.
        Sectors = [.. Enumerable.Range(0, (PackShape.Turn / thinnest) + 1).Select(place => new CrowdedSector(this, place))];
    }

    /// <summary>The flask's size.</summary>
    public int Size { get; }

    /// <summary>How long its trunk is.</summary>
    public int Rod { get; }

    /// <summary>The pieces as they are in this flask.</summary>
    public PackShape[] Shapes { get; }

    /// <summary>The place of each piece from the button up, less than 0 where it may not hang here.</summary>
    public int[] Ranks { get; }

    /// <summary>Its sectors, the empty ones last.</summary>
    public CrowdedSector[] Sectors { get; }

    /// <summary>How many of them are not empty.</summary>
    public int Used { get; private set; }

    /// <summary>Whether all of it hangs.</summary>
    public bool IsHung => Turn <= PackShape.Turn && Metal <= mostMetal && Array.TrueForAll(Sectors, s => s.Over == 0);

    private int Turn { get; set; }

    private long Metal { get; set; }

    /// <summary>By how much turn and metal it takes more than it has room for, with some more taken, as parts of all.</summary>
    /// <param name="turn">How much more turn.</param>
    /// <param name="metal">How much more metal.</param>
    public (double Turn, double Metal) Over(int turn, long metal) =>
        (Math.Max(0, Turn + turn - PackShape.Turn) / (double)PackShape.Turn, Math.Max(0, Metal + metal - mostMetal) / (double)mostMetal);

    /// <summary>Whether a piece may hang here.</summary>
    /// <param name="item">The piece.</param>
    public bool MayHang(int item) => Ranks[item] >= 0;

    /// <summary>How many more of a piece hang here that stood here, with some more or fewer.</summary>
    /// <param name="item">The piece.</param>
    /// <param name="more">How many more.</param>
    public int Staying(int item, int more) => Math.Min(counts[item] + more, stood[item]) - Math.Min(counts[item], stood[item]);

    /// <summary>Takes note of a sector in which a piece is hung or taken off.</summary>
    /// <param name="sector">The sector, as it is then.</param>
    /// <param name="item">The piece.</param>
    /// <param name="count">How many more there are.</param>
    /// <param name="turn">How much more turn.</param>
    /// <param name="metal">How much more metal.</param>
    public void Note(CrowdedSector sector, int item, int count, int turn, long metal)
    {
        if (sector.Count == 0)
        {
            Swap(sector.Place, --Used);
        }
        else if (sector.Place >= Used)
        {
            Swap(sector.Place, Used++);
        }

        counts[item] += count;
        Turn += turn;
        Metal += metal;
    }

    private void Swap(int one, int other)
    {
        (Sectors[one], Sectors[other]) = (Sectors[other], Sectors[one]);
        (Sectors[one].Place, Sectors[other].Place) = (one, other);
    }
}

/// <summary>A sector of such a tree.</summary>
/// <param name="tree">The tree.</param>
/// <param name="place">Its place among the tree's sectors.</param>
internal sealed class CrowdedSector(CrowdedTree tree, int place)
{
    // From the button up.
    private int[] items = new int[8];

    /// <summary>The tree.</summary>
    public CrowdedTree Tree => tree;

    /// <summary>Its place among the tree's sectors.</summary>
    public int Place { get; set; } = place;

    /// <summary>How many pieces hang in it.</summary>
    public int Count { get; private set; }

    /// <summary>How much turn it takes.</summary>
    public int Turn { get; private set; }

    /// <summary>How far its pieces stand over the end of the trunk.</summary>
    public int Over { get; private set; }

    /// <summary>Its pieces, from the button up.</summary>
    public ReadOnlySpan<int> Items => items.AsSpan(0, Count);

    /// <summary>The turn that it would take, and how far its pieces would stand over the end, with a piece less and one more.</summary>
    /// <param name="less">A piece that hangs in it, or less than 0.</param>
    /// <param name="more">Another, or less than 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public (int Turn, int Over) With(int less, int more)
    {
        var (ranks, shapes) = (tree.Ranks, tree.Shapes);
        var (turn, height, end) = (0, 0, tree.Rod);
        var rank = more >= 0 ? ranks[more] : int.MaxValue;
        foreach (var item in Items)
        {
            if (ranks[item] >= rank)
            {
                Stand(more);
                rank = int.MaxValue;
            }

            if (item == less)
            {
                less = -1;
                continue;
            }

            Stand(item);
        }

        if (rank < int.MaxValue)
        {
            Stand(more);
        }

        return (turn, end - tree.Rod);

        void Stand(int item)
        {
            ref readonly var shape = ref shapes[item];
            height += shape.Pitch;
            end = Math.Max(end, height + shape.Tail);
            turn = Math.Max(turn, shape.Theta);
        }
    }

    /// <summary>Hangs a piece in it.</summary>
    /// <param name="item">The piece.</param>
    /// <param name="metal">Its metal.</param>
    public void Hang(int item, long metal)
    {
        if (Count == items.Length)
        {
            Array.Resize(ref items, 2 * Count);
        }

        var at = Count++;
        for (; at > 0 && tree.Ranks[items[at - 1]] > tree.Ranks[item]; at--)
        {
            items[at] = items[at - 1];
        }

        items[at] = item;
        Changed(item, 1, metal);
    }

    /// <summary>Takes a piece off.</summary>
    /// <param name="item">The piece.</param>
    /// <param name="metal">Its metal.</param>
    public void Take(int item, long metal)
    {
        var at = Array.IndexOf(items, item, 0, Count);
        Array.Copy(items, at + 1, items, at, --Count - at);
        Changed(item, -1, -metal);
    }

    private void Changed(int item, int count, long metal)
    {
        var before = Turn;
        (Turn, Over) = With(-1, -1);
        tree.Note(this, item, count, Turn - before, metal);
    }
}
