using System.Runtime.CompilerServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Finds all sectors of a width that hold a piece and are worth enough, at the prices that were asked last.</summary>
/// <param name="type">The size and setting.</param>
/// <param name="width">The width's place.</param>
/// <param name="piece">The place of the piece among the members.</param>
/// <param name="isHarder">Where the metal suffices for anything: whether one piece is never easier to hang than another; else nothing.</param>
/// <param name="most">How many sectors to look for.</param>
/// <param name="work">How many steps to spend.</param>
internal sealed class SectorFinder(SectorType type, int width, int piece, bool[][]? isHarder, int most, long work)
{
    // What takes time, in steps of the tables: a look, a sector, a piece that it could hold besides.
    private const int WorkOfLook = 24;
    private const int WorkOfSector = 400;
    private const int WorkOfPiece = 12;

    private readonly int[] among = type.Among(width);
    private readonly SectorTable table = type.TableOf(width);
    private readonly PackShape[] shapes = type.Shapes;
    private readonly int[] copies = type.Copies;
    private readonly long[] metals = type.Metals;
    private readonly int[] net = type.Net;
    private readonly int[] members = type.Members;
    private readonly int rod = type.Rod;

    // By place among the pieces; and the places that hold something, from the top down.
    private readonly int[] taken = new int[type.Among(width).Length];
    private readonly int[] held = new int[type.Among(width).Length];
    private readonly int placeOfPiece = Array.IndexOf(type.Among(width), piece);
    private readonly List<(PackCount[] Sector, long Worth)> found = [];
    private int heldCount;
    private long least;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Whether there may be more than were found.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>Finds them.</summary>
    /// <param name="atLeast">What they are worth at least, less their metal.</param>
    /// <param name="metal">The metal there is.</param>
    public IReadOnlyList<(PackCount[] Sector, long Worth)> Find(long atLeast, long metal)
    {
        least = atLeast;
        if (placeOfPiece >= 0 && IsEnough(among.Length, rod, 0))
        {
            Look(among.Length, rod, metal, 0);
        }

        return found;
    }

    private bool IsEnough(int place, int height, long worth) => worth + table.At(place, height) >= least;

    // Piece by piece from the top down.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Look(int place, int height, long metal, long worth)
    {
        Work += WorkOfLook;
        IsCutShort |= Work > work;
        if (IsCutShort)
        {
            return;
        }

        if (place == 0)
        {
            Keep(worth);
            return;
        }

        place--;
        var member = among[place];
        ref readonly var shape = ref shapes[member];
        height = Math.Min(height, Math.Max(0, rod - shape.Tail));
        var (weight, value, fewest) = (metals[member], net[member], place == placeOfPiece ? 1 : 0);
        var count = Math.Min(copies[member], height / shape.Pitch);
        count = weight > 0 ? (int)Math.Min(count, metal / weight) : count;
        for (var c = count; c >= fewest; c--)
        {
            var (lower, more) = (height - (c * shape.Pitch), worth + ((long)c * value));
            if (IsEnough(place, lower, more))
            {
                taken[place] = c;
                held[heldCount] = place;
                heldCount += c > 0 ? 1 : 0;
                Look(place, lower, metal - (c * weight), more);
                heldCount -= c > 0 ? 1 : 0;
            }
        }

        taken[place] = 0;
    }

    private void Keep(long worth)
    {
        var isWide = false;
        for (var i = 0; i < heldCount; i++)
        {
            isWide |= shapes[among[held[i]]].Theta == type.Widths[width];
        }

        if (!isWide || !IsBest())
        {
            return;
        }

        Work += WorkOfSector;
        IsCutShort = found.Count >= most;
        var sector = new PackCount[heldCount];
        for (var i = 0; i < heldCount; i++)
        {
            sector[^(i + 1)] = new PackCount(members[among[held[i]]], taken[held[i]]);
        }

        found.Add((sector, worth));
    }

    // Where another piece finds room as well, or a harder one in place of an easier, nothing is lost by hanging that.
    private bool IsBest()
    {
        if (isHarder is null)
        {
            return true;
        }

        for (var more = 0; more < among.Length; more++)
        {
            if (taken[more] < copies[among[more]] && (Fits(more, -1) || TakesThePlaceOfAny(more)))
            {
                return false;
            }
        }

        return true;
    }

    private bool TakesThePlaceOfAny(int more)
    {
        var harder = isHarder![members[among[more]]];
        for (var i = 0; i < heldCount; i++)
        {
            var less = held[i];
            if (taken[less] > (less == placeOfPiece ? 1 : 0) && harder[members[among[less]]] && Fits(more, less))
            {
                return true;
            }
        }

        return false;
    }

    // One more of one piece, which may hang already, and one less of another.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Fits(int more, int less)
    {
        Work += WorkOfPiece;
        var (height, isToCome) = (rod, taken[more] == 0);
        for (var i = 0; i < heldCount && height >= 0; i++)
        {
            var place = held[i];
            if (isToCome && place < more)
            {
                height = Under(height, more, 1);
                isToCome = false;
            }

            height = Under(height, place, taken[place] + (place == more ? 1 : 0) - (place == less ? 1 : 0));
        }

        return (isToCome ? Under(height, more, 1) : height) >= 0;
    }

    private int Under(int height, int place, int count)
    {
        ref readonly var shape = ref shapes[among[place]];
        return count > 0 ? Math.Min(height, rod - shape.Tail) - (count * shape.Pitch) : height;
    }
}
