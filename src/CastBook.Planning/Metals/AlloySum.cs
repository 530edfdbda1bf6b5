using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>The metal of all rows of one alloy, added up row by row.</summary>
/// <param name="first">The first of them.</param>
internal sealed class AlloySum(PieceMetal first)
{
    private Mass? exact = Mass.Zero;
    private Mass least = Mass.Zero;
    private Mass? most = Mass.Zero;
    private Mass? ifFinished = Mass.Zero;
    private bool wantsMeaning;

    /// <summary>The alloy; missing while it is open.</summary>
    public KnownAlloy? Known => first.Alloy.Known;

    /// <summary>Whether some of a row's pieces wait for a later night.</summary>
    public bool SomeWait { get; private set; }

    /// <summary>What the rows come to.</summary>
    public MetalPlan Plan
    {
        get
        {
            var name = Known?.Name ?? first.Piece.Alloy!.Trim();
            return exact is not null
                ? new MetalPlan { Alloy = name, Pieces = exact }
                : new MetalPlan
                {
                    Alloy = name,
                    PiecesLeast = least > Mass.Zero ? least : null,
                    PiecesMost = most,
                    PiecesIfFinished = wantsMeaning ? ifFinished : null,
                };
        }
    }

    /// <summary>Adds a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="waits">Whether some of its pieces wait for a later night.</param>
    public void Add(PieceMetal row, bool waits)
    {
        var quantity = row.Piece.Quantity;
        exact += row.Each * quantity;

        // What is not known at all counts nothing for the least and leaves the most open.
        least += (row.Least ?? Mass.Zero) * (quantity ?? 0);
        most += row.Most * quantity;
        ifFinished += (row.WantsMeaning ? row.Piece.Weight : row.Each) * quantity;
        wantsMeaning |= row.WantsMeaning;
        SomeWait |= waits;
    }
}
