namespace CastBook.Workbooks.Verifying;

/// <summary>A fault of CastBook: the book it was about to hand over does not pass its own checks. Nothing was handed over.</summary>
#pragma warning disable CA1032 // Implement standard exception constructors: without its faults it says nothing.
public sealed class BrokenOutputException : Exception
#pragma warning restore CA1032
{
    /// <summary>A broken output.</summary>
    /// <param name="faults">What is wrong with it.</param>
    public BrokenOutputException(IReadOnlyList<string> faults)
        : base($"Bug in CastBook: the filled book is not sound, so it was thrown away. {string.Join(' ', faults ?? [])}") => Faults = faults ?? [];

    /// <summary>What is wrong with it.</summary>
    public IReadOnlyList<string> Faults { get; }
}
