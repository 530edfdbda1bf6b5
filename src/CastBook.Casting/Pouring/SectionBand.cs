namespace CastBook.Casting.Pouring;

/// <summary>What the sections of a piece ask of the flask's temperature, from the coldest flask to the hottest.</summary>
public enum SectionBand
{
    /// <summary>Heavy sections: a cold flask, so that they do not shrink open.</summary>
    Heavy,

    /// <summary>Ordinary work.</summary>
    Ordinary,

    /// <summary>Fine sections: a hot flask, so that they fill.</summary>
    Fine,
}
