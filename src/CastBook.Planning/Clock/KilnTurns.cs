using CastBook.Planning.Floors;
using UnitsNet;

namespace CastBook.Planning.Clock;

/// <summary>Puts flasks into kilns that take turns: as many as the floor takes, in the order given, stones apart.</summary>
/// <typeparam name="T">A flask.</typeparam>
/// <param name="floors">The floor of each kiln; one that is not known takes all.</param>
/// <param name="outside">The outside diameter of a flask.</param>
/// <param name="stonesIn">Whether stones are in it.</param>
/// <param name="place">Finds room for flasks on the floor of a kiln, by the kiln's place; nothing where there is none.</param>
internal sealed class KilnTurns<T>(
    IReadOnlyList<KilnFloor?> floors, Func<T, Length> outside, Func<T, bool> stonesIn, Func<int, IReadOnlyList<Length>, IReadOnlyList<FloorSpot>?> place)
{
    private static readonly Length Any = Length.FromKilometers(1);

    private int turn;

    /// <summary>Load by load the kiln, its flasks and where they stand; a flask that no kiln takes comes alone, with a kiln less than 0.</summary>
    /// <param name="open">The flasks; each is taken off as its load is made.</param>
    public IEnumerable<(int Kiln, List<T> Together, IReadOnlyList<FloorSpot> Spots)> Run(List<T> open)
    {
        for (var refused = 0; open.Count > 0; turn++)
        {
            var kiln = turn % floors.Count;
            var (together, spots) = Fill(kiln, open);
            if (together.Count == 0 && ++refused < floors.Count)
            {
                continue;
            }

            refused = 0;
            (kiln, together) = together.Count > 0 ? (kiln, together) : (-1, [open[0]]);
            open.RemoveAll(together.Contains);
            yield return (kiln, together, spots);
        }
    }

    private (List<T> Flasks, IReadOnlyList<FloorSpot> Spots) Fill(int kiln, List<T> open)
    {
        // Stones bear no common burnout, so they never share a load with others.
        var alike = open.TakeWhile(f => stonesIn(f) == stonesIn(open[0])).ToList();
        if (floors[kiln] is null)
        {
            return (alike, []);
        }

        var together = new List<T>();
        IReadOnlyList<FloorSpot> spots = [];
        var tooWide = Any;
        foreach (var flask in alike)
        {
            // Where one found no room, no wider one is tried.
            if (outside(flask) >= tooWide)
            {
                continue;
            }

            if (place(kiln, [.. together.Append(flask).Select(outside)]) is { } places)
            {
                together.Add(flask);
                spots = places;
            }
            else
            {
                tooWide = outside(flask);
            }
        }

        return (together, spots);
    }
}
