namespace CastBook.Workbooks.Reading.Values;

/// <summary>What was taken for granted when a cell was read as a number.</summary>
[Flags]
internal enum NumberAssumptions
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>A comma marks decimals.</summary>
    DecimalComma = 1,

    /// <summary>A sign or a blank marks thousands.</summary>
    Thousands = 2,

    /// <summary>The cell names another unit than its heading, and was converted.</summary>
    OwnUnit = 4,

    /// <summary>The cell's ounces are ordinary ones.</summary>
    PlainOunce = 8,

    /// <summary>A pair is two pieces.</summary>
    Pairs = 16,

    /// <summary>A dozen is twelve pieces.</summary>
    Dozens = 32,

    /// <summary>A liquid measure that names no country is that of the United States.</summary>
    PlainLiquid = 64,
}
