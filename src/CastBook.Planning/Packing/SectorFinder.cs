namespace CastBook.Planning.Packing;

/// <summary>Finds all sectors of a width that hold a piece and are worth enough, at the prices that were asked last.</summary>
/// <param name="type">The size and setting.</param>
/// <param name="width">The width's place.</param>
/// <param name="piece">The place of the piece among the members.</param>
/// <param name="isHarder">Where the metal suffices for anything: whether one piece is never easier to hang than another; else nothing.</param>
/// <param name="most">How many sectors to look for.</param>
/// <param name="work">How many steps to spend.</param>
internal sealed class SectorFinder(SectorType type, int width, int piece, bool[][]? isHarder, int most, long work)
{
    // What one look takes, in steps of the tables.
    private const int WorkOfLook = 16;
    private const int WorkOfSector = 400;

    private readonly int[] among = type.Among(width);
    private readonly int[] table = type.TableOf(width);
    private readonly int[] taken = new int[type.Members.Length];
    private readonly List<(PackCount[] Sector, long Worth)> found = [];
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
        Look(among.Length, type.Rod, metal, 0);
        return found;
    }

    // Piece by piece from the top down.
    private void Look(int place, int height, long metal, long worth)
    {
        Work += WorkOfLook;
        IsCutShort |= Work > work;
        if (IsCutShort || worth + table[(place * (type.Rod + 1)) + height] < least)
        {
            return;
        }

        if (place == 0)
        {
            Keep(worth);
            return;
        }

        var member = among[place - 1];
        ref readonly var shape = ref type.Shapes[member];
        height = Math.Min(height, Math.Max(0, type.Rod - shape.Tail));
        var count = Math.Min(type.Copies[member], height / shape.Pitch);
        count = type.Metals[member] > 0 ? (int)Math.Min(count, metal / type.Metals[member]) : count;
        for (var c = count; c >= (member == piece ? 1 : 0); c--)
        {
            taken[member] = c;
            Look(place - 1, height - (c * shape.Pitch), metal - (c * type.Metals[member]), worth + ((long)c * type.Net[member]));
        }

        taken[member] = 0;
    }

    private void Keep(long worth)
    {
        var isWide = false;
        foreach (var member in among)
        {
            isWide |= taken[member] > 0 && type.Shapes[member].Theta == type.Widths[width];
        }

        if (!isWide || !IsBest())
        {
            return;
        }

        Work += WorkOfSector;
        IsCutShort = found.Count >= most;
        found.Add(([.. among.Where(m => taken[m] > 0).Select(m => new PackCount(type.Members[m], taken[m]))], worth));
    }

    // Where another piece finds room as well, or a harder one in place of an easier, nothing is lost by hanging that.
    private bool IsBest()
    {
        if (isHarder is null)
        {
            return true;
        }

        foreach (var more in among)
        {
            if (taken[more] < type.Copies[more] && (Fits(more, -1) || TakesThePlaceOfAny(more)))
            {
                return false;
            }
        }

        return true;
    }

    private bool TakesThePlaceOfAny(int more)
    {
        foreach (var less in among)
        {
            if (taken[less] > (less == piece ? 1 : 0) && isHarder![type.Members[more]][type.Members[less]] && Fits(more, less))
            {
                return true;
            }
        }

        return false;
    }

    private bool Fits(int more, int less)
    {
        Work += among.Length * 2;
        var height = type.Rod;
        for (var place = among.Length - 1; place >= 0 && height >= 0; place--)
        {
            var member = among[place];
            var count = taken[member] + (member == more ? 1 : 0) - (member == less ? 1 : 0);
            height = count > 0 ? Math.Min(height, type.Rod - type.Shapes[member].Tail) - (count * type.Shapes[member].Pitch) : height;
        }

        return height >= 0;
    }
}
