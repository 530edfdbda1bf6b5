namespace CastBook.Planning;

/// <summary>What keeps more from hanging in a flask, or the flask from being smaller.</summary>
public enum FlaskLimit
{
    /// <summary>Nothing does: all pieces that could share it hang in it.</summary>
    Nothing,

    /// <summary>It has room for more.</summary>
    HasRoom,

    /// <summary>There is no room round the trunk.</summary>
    Turn,

    /// <summary>What is left round the trunk is too low for the pieces of other flasks.</summary>
    Height,

    /// <summary>The crucible takes no more metal.</summary>
    Crucible,

    /// <summary>The cup takes no larger button.</summary>
    Cup,

    /// <summary>The pieces of other flasks need another flask temperature.</summary>
    Temperature,

    /// <summary>A smaller flask would do, but all of them are in use.</summary>
    Owned,
}
