namespace CastBook.Planning.Findings;

/// <summary>How much a finding weighs. There are no other levels.</summary>
public enum Severity
{
    /// <summary>Something CastBook assumed or left alone; good to know.</summary>
    Note,

    /// <summary>Computed, but a person must look before casting.</summary>
    Check,

    /// <summary>This row or flask cannot be cast as written.</summary>
    Stop,
}
