using System.IO.Hashing;

namespace CastBook.Workbooks.Files;

/// <summary>Tells whether two contents are the same. Nobody is kept from making two that only seem so: that is not what it is for.</summary>
public static class ContentHash
{
    /// <summary>The hash of a stream from where it stands to its end.</summary>
    /// <param name="content">The stream.</param>
    /// <exception cref="ArgumentNullException"><paramref name="content"/> is null.</exception>
    public static UInt128 Of(Stream content)
    {
        ArgumentNullException.ThrowIfNull(content);
        var hash = new XxHash128();
        hash.Append(content);
        return hash.GetCurrentHashAsUInt128();
    }
}
