namespace CastBook.Planning.Packing;

/// <summary>What limits a flask of a plan.</summary>
internal enum PackLimit
{
    /// <summary>Nothing: no other flask has anything.</summary>
    Nothing,

    /// <summary>It has room for more.</summary>
    HasRoom,

    /// <summary>No sector is free.</summary>
    Turn,

    /// <summary>Nothing stands on what is free.</summary>
    Height,

    /// <summary>Its metal.</summary>
    Metal,

    /// <summary>The settings of what is in other flasks.</summary>
    Setting,

    /// <summary>No cheaper flask is free that would take all of it.</summary>
    Free,
}
