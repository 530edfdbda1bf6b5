namespace CastBook.Workbooks.Reading.Values;

/// <summary>What texts settle about the signs in numbers; of a whole column, all that any of its texts settles.</summary>
[Flags]
internal enum NumberSigns
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A point marks decimals.</summary>
    DecimalPoint = 1,

    /// <summary>A comma marks decimals.</summary>
    DecimalComma = 2,

    /// <summary>A point marks thousands.</summary>
    GroupPoint = 4,

    /// <summary>A comma marks thousands.</summary>
    GroupComma = 8,
}

/// <summary>Asks a column's signs what one of them means; signs that contradict one another settle nothing.</summary>
internal static class NumberSignsExtensions
{
    private const NumberSigns CommaWorld = NumberSigns.DecimalComma | NumberSigns.GroupPoint;
    private const NumberSigns PointWorld = NumberSigns.DecimalPoint | NumberSigns.GroupComma;

    /// <summary>Whether the sign marks decimals.</summary>
    public static bool IsDecimal(this NumberSigns signs, char sign) => sign == ','
        ? (signs & CommaWorld) != 0 && (signs & PointWorld) == 0
        : (signs & PointWorld) != 0 && (signs & CommaWorld) == 0;

    /// <summary>Whether the sign marks thousands.</summary>
    public static bool IsGroup(this NumberSigns signs, char sign) => sign == ','
        ? (signs & NumberSigns.GroupComma) != 0 && (signs & CommaWorld) == 0
        : (signs & NumberSigns.GroupPoint) != 0 && (signs & PointWorld) == 0;
}
