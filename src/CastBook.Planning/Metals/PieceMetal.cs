using CastBook.Casting.Patterns;
using CastBook.Planning.Patterns;
using UnitsNet;

namespace CastBook.Planning.Metals;

/// <summary>What one piece of a row takes.</summary>
/// <param name="Piece">The row.</param>
/// <param name="Alloy">What its alloy came to.</param>
/// <param name="Material">Its pattern material.</param>
internal readonly record struct PieceMetal(Piece Piece, AlloyAnswer Alloy, KnownMaterial Material)
{
    // Plain numbers, not a number where missing, and apart what few rows have: a long list has one of these for each row.
    private readonly double eachGrams = double.NaN;
    private readonly double volumeMillilitres = double.NaN;
    private readonly double patternGrams = double.NaN;
    private readonly OpenMetal open = OpenMetal.None;

    /// <summary>Metal of one piece, without gates; missing where it cannot be known.</summary>
    public Mass? Each { get => BareQuantity.Mass(eachGrams); init => eachGrams = BareQuantity.Of(value); }

    /// <summary>What its weight or volume comes to, where <see cref="Each"/> is the shop's own word; missing where that cannot be known.</summary>
    public Mass? WorkedOut { get => open.WorkedOut; init => open = open.With(open.WorkedOut, value, static (o, v) => o with { WorkedOut = v }); }

    /// <summary>The least one piece can take.</summary>
    public Mass? Least { get => Each ?? open.Least; init => open = open.With(open.Least, value, static (o, v) => o with { Least = v }); }

    /// <summary>The most one piece can take.</summary>
    public Mass? Most { get => Each ?? open.Most; init => open = open.With(open.Most, value, static (o, v) => o with { Most = v }); }

    /// <summary>Volume of one piece; missing where it cannot be known.</summary>
    public Volume? VolumeEach { get => BareQuantity.Volume(volumeMillilitres); init => volumeMillilitres = BareQuantity.Of(value); }

    /// <summary>Mass of one pattern; missing where it cannot be known.</summary>
    public Mass? PatternMass { get => BareQuantity.Mass(patternGrams); init => patternGrams = BareQuantity.Of(value); }

    /// <summary>What weighed castings taught, where the metal follows from it.</summary>
    public CastingFactor? Learnt { get => open.Learnt; init => open = open.With(open.Learnt, value, static (o, v) => o with { Learnt = v }); }

    /// <summary>True when only the material's density is missing.</summary>
    public bool WantsDensity { get; init; }

    /// <summary>True when only the meaning of the weights is missing.</summary>
    public bool WantsMeaning { get; init; }

    /// <summary>What is known of few rows only: held apart, so that the others need no room for it.</summary>
    /// <param name="WorkedOut">What weight or volume come to beside the shop's word.</param>
    /// <param name="Least">The least, where the metal is not known exactly.</param>
    /// <param name="Most">The most.</param>
    /// <param name="Learnt">What weighed castings taught.</param>
    private sealed record OpenMetal(Mass? WorkedOut, Mass? Least, Mass? Most, CastingFactor? Learnt)
    {
        /// <summary>Nothing.</summary>
        public static OpenMetal None { get; } = new(null, null, null, null);

        /// <summary>With another value; itself where there is none and was none.</summary>
        public OpenMetal With<T>(T before, T value, Func<OpenMetal, T, OpenMetal> change) => before is null && value is null ? this : change(this, value);
    }
}
