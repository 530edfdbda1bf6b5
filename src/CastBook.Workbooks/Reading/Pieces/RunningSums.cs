using CastBook.Workbooks.Reading.Grid;

namespace CastBook.Workbooks.Reading.Pieces;

/// <summary>Sums over the pieces read so far, by which a row of sums without a word is told from a piece without a name.</summary>
internal sealed class RunningSums
{
    // Weights are typed to a hundredth and summed by a program.
    private const double Tolerance = 0.006;

    private Sums section;
    private Sums all;

    /// <summary>Counts a piece in.</summary>
    /// <param name="quantity">Its quantity.</param>
    /// <param name="mass">Its weight.</param>
    public void Add(GridCell quantity, GridCell mass)
    {
        section.Add(quantity, mass);
        all.Add(quantity, mass);
    }

    /// <summary>Begins a new section.</summary>
    public void EndSection() => section = default;

    /// <summary>Whether a row's numbers are the sums of the section or of all pieces, over two rows or more; a quantity that is a formula is enough.</summary>
    /// <param name="quantity">The row's quantity.</param>
    /// <param name="mass">The row's weight.</param>
    public bool AreIn(GridCell quantity, GridCell mass) =>
        quantity.HasFormula || section.AreIn(quantity, mass) || all.AreIn(quantity, mass);

    /// <summary>Whether the numbers that a row says are the sums of the section or of all pieces, of however many rows.</summary>
    /// <param name="quantity">The row's quantity.</param>
    /// <param name="mass">The row's weight.</param>
    public bool Agree(GridCell quantity, GridCell mass) =>
        quantity.HasFormula || mass.HasFormula || section.Agree(quantity, mass) || all.Agree(quantity, mass);

    private struct Sums
    {
        private int rows;
        private double quantity;
        private double mass;
        private double each;

        public void Add(GridCell itsQuantity, GridCell itsMass)
        {
            rows++;
            quantity += itsQuantity.Number;
            mass += itsMass.Number;
            each += itsQuantity.Number * itsMass.Number;
        }

        public readonly bool AreIn(GridCell itsQuantity, GridCell itsMass) =>
            rows >= 2 && itsQuantity.Kind == CellKind.Number && Agree(itsQuantity, itsMass);

        public readonly bool Agree(GridCell itsQuantity, GridCell itsMass) =>
            (itsQuantity.IsEmpty || (itsQuantity.Kind == CellKind.Number && itsQuantity.Number == quantity))
            && (itsMass.Kind != CellKind.Number || Math.Abs(itsMass.Number - mass) < Tolerance || Math.Abs(itsMass.Number - each) < Tolerance);
    }
}
