namespace CastBook.Casting.Metals;

/// <summary>How well a number is known.</summary>
public enum SourceKind
{
    /// <summary>By definition, or by the name of the thing.</summary>
    Exact,

    /// <summary>Printed by somebody else for this very thing.</summary>
    Published,

    /// <summary>Worked out by a rule that measurements agree with.</summary>
    Rule,

    /// <summary>What casters usually do, without a source to read.</summary>
    CommonPractice,

    /// <summary>Remembered from a published source, not read again: to be checked.</summary>
    Memory,
}
