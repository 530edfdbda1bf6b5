namespace CastBook.Templates;

/// <summary>What a new book is for.</summary>
public enum StarterKind
{
    /// <summary>A casting night: the list of pieces and every sheet of the shop.</summary>
    Night,

    /// <summary>A list of pieces and no more; what else is needed is asked, or stands in a shop file.</summary>
    List,

    /// <summary>A shop file: what the shop owns and has decided, for many books of a folder.</summary>
    Shop,

    /// <summary>A log of what came out of the flasks.</summary>
    Results,
}
