using CastBook.Planning.Floors;

namespace CastBook.Planning.Packing.Staying;

/// <summary>Two sectors emptied together: goes through all ways to hang their pieces in both again, and draws one of them.</summary>
/// <remarks>
/// The better a way is, the likelier it is drawn, and the more so the colder it is: from hot to cold, little by little, this is simulated annealing.
/// Source: Kirkpatrick, Gelatt and Vecchi, Optimization by Simulated Annealing, Science 220 (1983).
/// </remarks>
/// <param name="problem">The problem.</param>
/// <param name="chance">Draws.</param>
internal sealed class SectorPair(PackProblem problem, Chance chance)
{
    /// <summary>What a piece is worth that hangs where it stood.</summary>
    public const int Piece = 100;

    // More ways than these are too many to go through.
    private const long MostWays = 20_000;

    // Turn that is left over is worth more in one piece than in two, but never as much as a piece.
    private const int PartOfRoom = 32;
    private const int MostOfRoom = Piece / 2;

    // What is half as likely so many times is as good as never drawn.
    private const int MostHalvings = 10;

    private const int WorkOfPair = 1500;
    private const int WorkOfPiece = 15;
    private const int WorkOfWay = 50;

    private static readonly double[] Likelihoods = [.. Enumerable.Range(-2 * MostHalvings, (4 * MostHalvings) + 1).Select(d => Math.ScaleB(1, d))];

    // The pieces of both in the order in which they hang in the first; then, of each, how many are tried there and how many were drawn.
    private readonly PooledPiece[] pool = new PooledPiece[problem.Items.Length];
    private readonly int[] there = new int[problem.Items.Length];
    private readonly int[] drawn = new int[problem.Items.Length];

    // What all pieces from a place on are worth at most.
    private readonly int[] hopes = new int[problem.Items.Length + 1];
    private readonly int[][] worths = [.. problem.Items.Select(i => new int[i.Quantity + 1])];
    private readonly int[][] orders = [.. problem.Sizes.Select((_, size) => Order(problem, size))];
    private readonly int[][] places = [.. problem.Sizes.Select((_, size) => Places(Order(problem, size)))];
    private readonly List<int> otherOrder = [];
    private int pooled;
    private SectorSide one;
    private SectorSide other;
    private int oneRod;
    private int otherRod;
    private bool isOneTree;
    private int least;
    private int heat;
    private int worthNow;
    private double total;

    /// <summary>Steps so far.</summary>
    public long Work { get; private set; }

    /// <summary>Draws a way to hang all pieces of two sectors.</summary>
    /// <param name="ones">What hangs in the first, by piece; afterwards what does then.</param>
    /// <param name="others">What hangs in the other; afterwards what does then.</param>
    /// <param name="sides">The room that both have.</param>
    /// <param name="staying">How many of a piece hang in a flask they stood in where so many of these are in the first sector.</param>
    /// <param name="hot">By how much less worth a way is half as likely; at least 1.</param>
    /// <returns>Whether one was drawn; otherwise there are too many.</returns>
    public bool Draw(int[] ones, int[] others, (SectorSide One, SectorSide Other, bool IsOneTree) sides, Func<int, int, int> staying, int hot)
    {
        Work += WorkOfPair;
        (one, other, isOneTree) = sides;
        (heat, total, worthNow) = (hot, 0, 0);
        if (!Pool(ones, others))
        {
            return false;
        }

        Value(ones, staying);
        (oneRod, otherRod) = (problem.Sizes[one.Size].Rod, problem.Sizes[other.Size].Rod);
        least = worthNow - (MostHalvings * heat) - MostOfRoom;
        Hang(0, default, default, 0);
        for (var k = 0; k < pooled; k++)
        {
            (ones[pool[k].Kind], others[pool[k].Kind]) = (drawn[k], pool[k].Amount - drawn[k]);
        }

        return true;
    }

    // Both sectors hang from the longest tail on, each by the tails of its own size.
    private bool Pool(int[] ones, int[] others)
    {
        pooled = 0;
        var ways = 1L;
        foreach (var kind in orders[one.Size])
        {
            var amount = ones[kind] + others[kind];
            if (amount > 0 && ways <= MostWays)
            {
                pool[pooled++] = new PooledPiece(
                    kind, amount, MayHang(kind, other) ? 0 : amount, MayHang(kind, one) ? amount : 0, worths[kind],
                    problem.Shapes[one.Size][kind], problem.Shapes[other.Size][kind], problem.Metals[kind]);
                ways *= amount + 1;
            }
        }

        if (ways is < 2 or > MostWays)
        {
            return false;
        }

        otherOrder.Clear();
        for (var k = 0; k < pooled; k++)
        {
            var place = places[other.Size][pool[k].Kind];
            var at = otherOrder.Count;
            while (at > 0 && places[other.Size][pool[otherOrder[at - 1]].Kind] > place)
            {
                at--;
            }

            otherOrder.Insert(at, k);
        }

        return true;
    }

    private void Value(int[] ones, Func<int, int, int> staying)
    {
        hopes[pooled] = 0;
        for (var k = pooled - 1; k >= 0; k--)
        {
            ref readonly var piece = ref pool[k];
            var best = 0;
            for (var count = 0; count <= piece.Amount; count++)
            {
                piece.Worths[count] = Piece * staying(piece.Kind, count);
                best = Math.Max(best, piece.Worths[count]);
            }

            hopes[k] = hopes[k + 1] + best;
            worthNow += piece.Worths[ones[piece.Kind]];
            drawn[k] = ones[piece.Kind];
        }
    }

    private void Hang(int k, SectorUse a, SectorUse b, int worth)
    {
        Work += WorkOfPiece;
        if (k == pooled)
        {
            Weigh(a.Theta, b.Theta, worth);
            return;
        }

        ref readonly var piece = ref pool[k];
        for (var count = piece.Least; count <= piece.Most; count++)
        {
            var rest = piece.Amount - count;
            var next = worth + piece.Worths[count];
            var nextA = count == 0 ? a : new SectorUse(Math.Max(a.Theta, piece.InOne.Theta), a.Height + (count * piece.InOne.Pitch), a.Metal + (count * piece.Metal));
            var nextB = rest == 0 ? b : new SectorUse(Math.Max(b.Theta, piece.InOther.Theta), b.Height + (rest * piece.InOther.Pitch), b.Metal + (rest * piece.Metal));
            if (next + hopes[k + 1] >= least && nextA.Theta <= one.Turn && nextB.Theta <= other.Turn && nextA.Metal <= one.Metal && nextB.Metal <= other.Metal
                && (!isOneTree || nextA.Theta + nextB.Theta <= one.Turn) && (count == 0 || nextA.Height + piece.InOne.Tail <= oneRod) && nextB.Height <= otherRod)
            {
                there[k] = count;
                Hang(k + 1, nextA, nextB, next);
            }
        }
    }

    private void Weigh(int thetaA, int thetaB, int worth)
    {
        Work += WorkOfWay;
        if (!OtherHangs())
        {
            return;
        }

        var (left, right) = isOneTree ? (one.Turn - thetaA - thetaB, 0) : (one.Turn - thetaA, other.Turn - thetaB);
        var better = worth - worthNow + Math.Min(MostOfRoom, ((left * left) + (right * right)) / PartOfRoom);
        var weight = Likelihoods[Math.Clamp(better / heat, -2 * MostHalvings, 2 * MostHalvings) + (2 * MostHalvings)];
        total += weight;
        if (chance.Next() * total < weight)
        {
            Array.Copy(there, drawn, pooled);
        }
    }

    private bool OtherHangs()
    {
        var height = 0;
        foreach (var k in otherOrder)
        {
            ref readonly var piece = ref pool[k];
            if (piece.Amount > there[k])
            {
                height += (piece.Amount - there[k]) * piece.InOther.Pitch;
                if (height + piece.InOther.Tail > otherRod)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool MayHang(int kind, SectorSide side) => problem.Fits(kind, side.Size) && problem.Items[kind].MayBeCastAt(side.Setting);

    // What fits hangs from the longest tail on; what does not comes last.
    private static int[] Order(PackProblem problem, int size) =>
        [.. problem.ByTail[size], .. Enumerable.Range(0, problem.Items.Length).Where(i => !problem.Fits(i, size))];

    private static int[] Places(int[] order)
    {
        var places = new int[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            places[order[i]] = i;
        }

        return places;
    }

    // What hangs in a sector so far.
    private readonly record struct SectorUse(int Theta, int Height, long Metal);

    // A piece of both sectors: how many, how many of them may be in the first, and what they are worth there.
    private readonly record struct PooledPiece(int Kind, int Amount, int Least, int Most, int[] Worths, PackShape InOne, PackShape InOther, long Metal);
}

/// <summary>The room that a sector may take of its tree.</summary>
/// <param name="Size">The flask's size.</param>
/// <param name="Setting">The flask's setting.</param>
/// <param name="Turn">The turn that no other sector takes.</param>
/// <param name="Metal">The metal that no other sector takes.</param>
internal readonly record struct SectorSide(int Size, int Setting, int Turn, long Metal);
