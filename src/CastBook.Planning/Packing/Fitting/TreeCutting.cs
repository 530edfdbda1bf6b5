namespace CastBook.Planning.Packing.Fitting;

/// <summary>Ways of cutting trees into sectors: finds the one that is worth most, and remembers it for trees with as much free.</summary>
/// <remarks>What was worth most a moment ago nearly is again, so that a master that is given these ends sooner.</remarks>
internal sealed class TreeCutting
{
    // Of each size and setting and angle the last so many are remembered.
    private const int MostKnown = 20;

    // Less than any worth that matters.
    private const double Dust = 1e-12;

    private readonly Dictionary<(int Type, int Angle), Queue<int[]>> known = [];

    /// <summary>Steps of the last look.</summary>
    public long Work { get; private set; }

    /// <summary>Ways that were found before, each as the widths of its sectors.</summary>
    /// <param name="type">The place of the size and setting.</param>
    /// <param name="angle">The angle that is free.</param>
    public IEnumerable<int[]> Known(int type, int angle) => known.GetValueOrDefault((type, angle)) ?? [];

    /// <summary>The way that is worth most, as the widths of its sectors; nothing where none is worth enough.</summary>
    /// <param name="type">The place of the size and setting.</param>
    /// <param name="angle">The angle that is free.</param>
    /// <param name="rooms">What room for a sector is worth, by its width.</param>
    /// <param name="worth">What it is worth more than.</param>
    public int[]? Find(int type, int angle, double[] rooms, double worth)
    {
        var (best, last) = (new double[angle + 1], new int[angle + 1]);
        int[] widths = [.. Enumerable.Range(1, angle).Where(w => rooms[w] > 0)];
        for (var a = 1; a <= angle; a++)
        {
            best[a] = best[a - 1];
            foreach (var width in widths)
            {
                if (width <= a && best[a - width] + rooms[width] > best[a] + Dust)
                {
                    (best[a], last[a]) = (best[a - width] + rooms[width], width);
                }
            }
        }

        Work = angle * widths.Length;
        return best[angle] <= worth ? null : Remembered(type, angle, last);
    }

    private int[] Remembered(int type, int angle, int[] last)
    {
        var found = new List<int>();
        for (var a = angle; a > 0; a -= Math.Max(1, last[a]))
        {
            if (last[a] > 0)
            {
                found.Add(last[a]);
            }
        }

        if (!known.TryGetValue((type, angle), out var ways))
        {
            known[(type, angle)] = ways = new Queue<int[]>();
        }

        if (ways.Count == MostKnown)
        {
            ways.Dequeue();
        }

        int[] widths = [.. found];
        ways.Enqueue(widths);
        return widths;
    }
}
