namespace CastBook.Planning.Packing;

/// <summary>What one piece takes of the tree of a flask size, in whole units.</summary>
/// <param name="Theta">Angle round the trunk, in parts of <see cref="Turn"/>; 0 where only a share of the tree is known.</param>
/// <param name="Pitch">Length of trunk.</param>
/// <param name="Tail">How far it stands up beyond its length of trunk.</param>
/// <param name="Share">Share of the tree, in parts of <see cref="Whole"/>; only where angle and length are not known.</param>
internal readonly record struct PackShape(int Theta, int Pitch, int Tail, long Share)
{
    /// <summary>The units of a whole turn.</summary>
    public const int Turn = 144;

    /// <summary>The units of a whole tree.</summary>
    public const long Whole = 1_000_000_000;

    /// <summary>A piece that does not fit.</summary>
    public static PackShape None => default;

    /// <summary>Whether it fits.</summary>
    public bool Fits => Theta > 0 || Share > 0;

    /// <summary>Whether it takes a sector of the trunk.</summary>
    public bool HasSector => Theta > 0;

    /// <summary>A share of a tree as angle, rounded up.</summary>
    /// <param name="share">The share.</param>
    public static int Angle(long share) => (int)(((share * Turn) + Whole - 1) / Whole);
}
