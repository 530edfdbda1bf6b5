using CastBook.Casting.Patterns;
using CastBook.Planning.Patterns;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>What one piece of a row takes; worked out step by step, and not changed after that.</summary>
/// <param name="piece">The row.</param>
/// <param name="alloy">What its alloy came to.</param>
/// <param name="material">Its pattern material.</param>
internal sealed class PieceMetal(Piece piece, AlloyAnswer alloy, KnownMaterial material)
{
    // Plain numbers, not a number where missing: a long list makes one of these for each row.
    private double leastGrams = double.NaN;
    private double mostGrams = double.NaN;
    private double workedOutGrams = double.NaN;
    private bool isExact;
    private double volumeMillilitres = double.NaN;
    private double patternGrams = double.NaN;

    /// <summary>The row.</summary>
    public Piece Piece => piece;

    /// <summary>What its alloy came to.</summary>
    public AlloyAnswer Alloy => alloy;

    /// <summary>Its pattern material.</summary>
    public KnownMaterial Material => material;

    /// <summary>Metal of one piece, without gates; missing where it cannot be known.</summary>
    public Mass? Each => isExact ? PlainNumber.Mass(leastGrams) : null;

    /// <summary>What its weight or volume comes to, where <see cref="Each"/> is the shop's own word; missing where that cannot be known.</summary>
    public Mass? WorkedOut { get => PlainNumber.Mass(workedOutGrams); set => workedOutGrams = PlainNumber.Of(value); }

    /// <summary>The least one piece can take, where it is not known exactly.</summary>
    public Mass? Least { get => PlainNumber.Mass(leastGrams); set => leastGrams = PlainNumber.Of(value); }

    /// <summary>The most one piece can take, where it is not known exactly.</summary>
    public Mass? Most { get => PlainNumber.Mass(mostGrams); set => mostGrams = PlainNumber.Of(value); }

    /// <summary>Volume of one piece; missing where it cannot be known.</summary>
    public Volume? VolumeEach
    {
        get => PlainNumber.Volume(volumeMillilitres);
        set => volumeMillilitres = PlainNumber.Of(value);
    }

    /// <summary>Mass of one pattern; missing where it cannot be known.</summary>
    public Mass? PatternMass { get => PlainNumber.Mass(patternGrams); set => patternGrams = PlainNumber.Of(value); }

    /// <summary>What weighed castings taught, where the metal follows from it.</summary>
    public CastingFactor? Learnt { get; set; }

    /// <summary>True when only the material's density is missing.</summary>
    public bool WantsDensity { get; set; }

    /// <summary>True when only the meaning of the weights is missing.</summary>
    public bool WantsMeaning { get; set; }

    /// <summary>Sets the metal of one piece, which is then the least and the most too.</summary>
    /// <param name="each">The metal.</param>
    public void SetExactly(Mass each)
    {
        (leastGrams, mostGrams) = (each.Grams, each.Grams);
        isExact = true;
    }

    /// <summary>Leaves the metal of one piece open, but for the least and the most of it.</summary>
    public void Unsettle() => isExact = false;
}
