namespace CastBook.Planning.Shops;

/// <summary>What a burnout schedule is for.</summary>
public enum ScheduleUse
{
    /// <summary>Wax and resin alike; never stones, which need a low top.</summary>
    WaxAndResin,

    /// <summary>Moulds with wax alone in them.</summary>
    Wax,

    /// <summary>Moulds with resin in them.</summary>
    Resin,

    /// <summary>Moulds with stones in them.</summary>
    Stones,
}
