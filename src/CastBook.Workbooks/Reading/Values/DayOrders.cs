namespace CastBook.Workbooks.Reading.Values;

/// <summary>What texts settle about days written in digits; of a whole column, all that any of its texts settles.</summary>
[Flags]
internal enum DayOrders
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>24/12/2026: the day comes first.</summary>
    DayFirst = 1,

    /// <summary>12/24/2026: the month comes first.</summary>
    MonthFirst = 2,
}
