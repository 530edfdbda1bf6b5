using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Lists the sectors of a size and setting to which nothing can be added and that are worth enough, at the prices that were asked last.</summary>
/// <remarks>Whatever hangs in a sector hangs in one of these of the same width, with more beside it.</remarks>
/// <param name="type">The size and setting.</param>
/// <param name="kind">The kind of room that the sectors take.</param>
/// <param name="work">How many steps to spend.</param>
internal sealed class SectorLister(SectorType type, int kind, long work)
{
    // What takes time, in steps of the tables: a look, a piece that could be added.
    private const int WorkOfLook = 24;
    private const int WorkOfPiece = 2;

    private readonly PackShape[] shapes = type.Shapes;
    private readonly int[] copies = type.Copies;
    private readonly int[] net = type.Net;
    private readonly int rod = type.Rod;
    private int[] among = [];
    private int[] taken = [];
    private SectorTable table = null!;
    private List<ListedSector> listed = [];
    private int most;
    private long least;
    private bool isCutShort;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Lists the sectors of a width.</summary>
    /// <param name="width">The width's place.</param>
    /// <param name="atLeast">What they are worth at least, less their metal.</param>
    /// <param name="into">Takes them.</param>
    /// <param name="atMost">How many it may hold.</param>
    /// <returns>Whether these are all.</returns>
    public bool List(int width, long atLeast, List<ListedSector> into, int atMost)
    {
        (least, listed, most) = (atLeast, into, atMost);
        (among, table) = (type.Among(width), type.TableOf(width));
        taken = new int[among.Length];
        if (table.Best >= least)
        {
            Look(among.Length, rod, 0);
        }

        return !isCutShort;
    }

    // Piece by piece from the top down.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Look(int at, int height, long worth)
    {
        Work += WorkOfLook;
        isCutShort |= listed.Count >= most || Work > work;
        if (isCutShort || worth + table.At(at, height) < least)
        {
            return;
        }

        if (at == 0)
        {
            if (IsFull())
            {
                Keep();
            }

            return;
        }

        at--;
        ref readonly var shape = ref shapes[among[at]];
        height = Math.Min(height, Math.Max(0, rod - shape.Tail));
        for (var c = Math.Min(copies[among[at]], height / shape.Pitch); c >= 0; c--)
        {
            taken[at] = c;
            Look(at, height - (c * shape.Pitch), worth + ((long)c * net[among[at]]));
        }

        taken[at] = 0;
    }

    // Whether nothing finds room as well.
    private bool IsFull()
    {
        for (var more = 0; more < among.Length; more++)
        {
            if (taken[more] < copies[among[more]] && FitsToo(more))
            {
                return false;
            }
        }

        return true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool FitsToo(int more)
    {
        Work += WorkOfPiece * among.Length;
        var height = rod;
        for (var i = among.Length - 1; i >= 0 && height >= 0; i--)
        {
            var count = taken[i] + (i == more ? 1 : 0);
            ref readonly var shape = ref shapes[among[i]];
            height = count > 0 ? Math.Min(height, rod - shape.Tail) - (count * shape.Pitch) : height;
        }

        return height >= 0;
    }

    private void Keep()
    {
        var content = new List<PackCount>();
        for (var i = 0; i < among.Length; i++)
        {
            if (taken[i] > 0)
            {
                content.Add(new PackCount(type.Members[among[i]], taken[i]));
            }
        }

        listed.Add(new ListedSector(kind, [.. content]));
    }
}
