using CastBook.Planning;
using CastBook.Planning.Shops;
using UnitsNet;

namespace CastBook.Benchmarks;

/// <summary>Invented casting nights for the search of flasks: bands, signets, pendants, studs, charms and cuffs.</summary>
/// <remarks>The mix is judgement, not shop data. The same seed gives the same night.</remarks>
internal static class InventedNight
{
    // Name; length, width and thickness in mm, from and to; millilitres of metal; finest and heaviest section; whether it is a ring.
    private static readonly (string Name, double[] From, double[] To, double LeastMl, double MostMl, double Finest, double Heaviest, bool Ring)[] Kinds =
    [
        ("Band", [19, 2, 1.5], [24, 8, 2], 0.25, 1.2, 1.4, 2.4, true),
        ("Signet", [21, 6, 3], [25, 12, 5], 0.9, 2.4, 1.6, 5.5, true),
        ("Pendant", [20, 12, 2], [36, 20, 4], 0.6, 2.0, 1.2, 3.0, false),
        ("Stud", [8, 6, 2], [13, 10, 4], 0.08, 0.3, 0.7, 1.8, false),
        ("Charm", [12, 8, 3], [20, 14, 7], 0.3, 1.1, 1.0, 4.0, false),
        ("Cuff", [26, 14, 3], [36, 22, 6], 1.5, 4.0, 2.2, 6.5, false),
    ];

    /// <summary>A night of up to four alloys and three to five sizes.</summary>
    /// <param name="pieces">How many pieces.</param>
    /// <param name="seed">What chance starts from.</param>
    public static Night Mixed(int pieces, int seed)
    {
        var random = new Random(seed);
        var alloys = pieces <= 60 ? random.Next(2, 4) : 4;
        return Of(pieces, random, alloys, random.Next(3, 6), dense: false);
    }

    /// <summary>A night of one alloy in which every piece may be cast beside every other.</summary>
    /// <param name="pieces">How many pieces.</param>
    /// <param name="seed">What chance starts from.</param>
    public static Night Dense(int pieces, int seed)
    {
        var random = new Random(seed);
        return Of(pieces, random, 1, random.Next(3, 6), dense: true);
    }

    /// <summary>The night after two pieces were cancelled and three came in, with what the first plan said standing in it.</summary>
    /// <param name="night">The night.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="seed">What chance starts from.</param>
    public static Night Edited(Night night, NightPlan plan, int seed)
    {
        var random = new Random(seed);
        var rows = night.Pieces.Select(p => p with { LastFlasks = plan.Pieces[p.Id].Flasks }).ToList();
        for (var cancelled = 0; cancelled < 2;)
        {
            var at = random.Next(rows.Count);
            if (rows[at].Quantity > 0)
            {
                rows[at] = rows[at] with { Quantity = rows[at].Quantity - 1 };
                cancelled++;
            }
        }

        rows.RemoveAll(p => p.Quantity == 0);
        for (var added = 0; added < 3; added++)
        {
            rows.Add(rows[random.Next(night.Pieces.Count - 2)] with { Name = "Late", Quantity = 1, LastFlasks = [] });
        }

        return night with { Pieces = [.. rows.Select((p, i) => p with { Id = i })], Trees = Lines(plan) };
    }

    /// <summary>The night with a plan standing in it.</summary>
    /// <param name="night">The night.</param>
    /// <param name="plan">Its plan.</param>
    public static Night Standing(Night night, NightPlan plan) =>
        night with { Pieces = [.. night.Pieces.Select(p => p with { LastFlasks = plan.Pieces[p.Id].Flasks })], Trees = Lines(plan) };

    private static List<TreeInHand> Lines(NightPlan plan) =>
        [.. plan.Flasks.Select(f => new TreeInHand(f.Letter, f.Size.Name, null, null, null, FlaskState.Planned))];

    private static Night Of(int pieces, Random random, int alloys, int sizes, bool dense)
    {
        var rows = new List<Piece>();
        for (var left = pieces; left > 0;)
        {
            var quantity = Math.Min(left, random.Next(3) == 0 ? random.Next(2, 9) : random.Next(1, 3));
            rows.Add(Row(random, rows.Count, quantity, alloys, dense));
            left -= quantity;
        }

        return new Night { Pieces = rows, Shop = InventedShop.Of(alloys, sizes, Math.Max(8, pieces / 4)), WeightsAreOf = WeightMeaning.Pattern };
    }

    private static Piece Row(Random random, int id, int quantity, int alloys, bool dense)
    {
        var kind = Kinds[random.Next(Kinds.Length)];
        var size = kind.From.Select((from, i) => Math.Round((from + (random.NextDouble() * (kind.To[i] - from))) * 2) / 2).ToArray();
        var ml = kind.LeastMl + (random.NextDouble() * (kind.MostMl - kind.LeastMl));
        var row = new Piece
        {
            Id = id,
            Name = kind.Name,
            Quantity = quantity,
            PatternVolume = Volume.FromMilliliters(ml),
            Alloy = InventedShop.AlloyName(random.Next(alloys)),
            Box = new PieceBox(kind.Ring, Length.FromMillimeters(size[0]), Length.FromMillimeters(size[1]), Length.FromMillimeters(size[2])),
        };
        return dense ? row : row with
        {
            FinestSection = Length.FromMillimeters(kind.Finest),
            HeaviestSection = Length.FromMillimeters(kind.Heaviest),
        };
    }
}
