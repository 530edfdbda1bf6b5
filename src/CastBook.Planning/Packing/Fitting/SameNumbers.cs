using System.Runtime.InteropServices;

namespace CastBook.Planning.Packing.Fitting;

/// <summary>Compares lists of numbers by the numbers.</summary>
internal sealed class SameNumbers : IEqualityComparer<long[]>
{
    public bool Equals(long[]? x, long[]? y) => x.AsSpan().SequenceEqual(y);

    public int GetHashCode(long[] obj)
    {
        var hash = new HashCode();
        hash.AddBytes(MemoryMarshal.AsBytes(obj.AsSpan()));
        return hash.ToHashCode();
    }
}
