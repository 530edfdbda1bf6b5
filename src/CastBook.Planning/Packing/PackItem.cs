namespace CastBook.Planning.Packing;

/// <summary>Some equal pieces to be hung.</summary>
/// <param name="Quantity">How many.</param>
/// <param name="Metal">Metal of one, in the unit of <see cref="PackSize.Metal"/>.</param>
/// <param name="Shapes">What one takes of each size.</param>
internal sealed record PackItem(int Quantity, long Metal, IReadOnlyList<PackShape> Shapes)
{
    /// <summary>The lowest flask setting it may be cast at.</summary>
    public int Lowest { get; init; }

    /// <summary>The highest flask setting it may be cast at.</summary>
    public int Highest { get; init; }

    /// <summary>The flask it must be in, or less than 0.</summary>
    public int Pin { get; init; } = -1;

    /// <summary>How much sooner than others it is wanted, from 0 to <see cref="MostUrgent"/>.</summary>
    public int Urgency { get; init; }

    /// <summary>Its thickness in hundredths of a millimetre; 0 where it is not known.</summary>
    public int Section { get; init; }

    /// <summary>How demanding its burnout is: that of a flask is that of its most demanding piece.</summary>
    public int Sort { get; init; }

    /// <summary>The most that <see cref="Urgency"/> can be.</summary>
    public const int MostUrgent = 7;

    /// <summary>Whether it may be cast at a flask setting.</summary>
    /// <param name="setting">The setting.</param>
    public bool MayBeCastAt(int setting) => Lowest <= setting && setting <= Highest;
}
