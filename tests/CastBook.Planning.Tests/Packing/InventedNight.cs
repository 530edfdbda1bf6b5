namespace CastBook.Planning.Tests.Packing;

/// <summary>Invented nights of two alloys and three flask sizes: rings and boxes of all sorts.</summary>
internal static class InventedNight
{
    /// <summary>A night.</summary>
    /// <param name="pieces">How many pieces.</param>
    /// <param name="seed">What chance starts from.</param>
    public static Night Of(int pieces, int seed)
    {
        var random = new Random(seed);
        var rows = new List<Piece>();
        for (var left = pieces; left > 0; left -= rows[^1].Quantity!.Value)
        {
            rows.Add(Row(random, Math.Min(left, random.Next(1, 6))));
        }

        var shop = Wrenmoor.Shop with { FlaskSizes = [Wrenmoor.Small with { Owned = 8 }, Wrenmoor.Middle with { Owned = 6 }, Wrenmoor.Large with { Owned = 6 }] };
        return Wrenmoor.Night(shop, [.. rows]);
    }

    /// <summary>The night with two pieces cancelled and three more.</summary>
    /// <param name="night">The night.</param>
    /// <param name="seed">What chance starts from.</param>
    public static Night Edited(Night night, int seed)
    {
        var random = new Random(seed);
        var rows = night.Pieces.ToList();
        for (var i = 0; i < 2; i++)
        {
            var at = random.Next(rows.Count);
            rows[at] = rows[at] with { Quantity = rows[at].Quantity - 1 };
            rows.RemoveAll(p => p.Quantity == 0);
        }

        rows.AddRange(Enumerable.Range(0, 3).Select(_ => Row(random, 1)));
        return night with { Pieces = [.. rows.Select((p, i) => p with { Id = i })] };
    }

    private static Piece Row(Random random, int quantity)
    {
        var isRing = random.Next(2) == 0;
        var width = 2 + (random.NextDouble() * 6);
        return Wrenmoor.Ring(quantity) with
        {
            Alloy = random.Next(3) == 0 ? "Bell bronze" : "Bench silver",
            Weight = UnitsNet.Mass.FromGrams(0.2 + (random.NextDouble() * 2)),
            FinestSection = random.Next(4) == 0 ? Wrenmoor.Mm(0.7) : null,
            Box = isRing
                ? new PieceBox(true, Wrenmoor.Mm(16 + (random.NextDouble() * 8)), Wrenmoor.Mm(width), null)
                : new PieceBox(false, Wrenmoor.Mm(8 + (random.NextDouble() * 18)), Wrenmoor.Mm(width), Wrenmoor.Mm(2 + (random.NextDouble() * 5))),
        };
    }
}
