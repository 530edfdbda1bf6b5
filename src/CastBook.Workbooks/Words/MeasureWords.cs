using CastBook.Workbooks.Reading.Headings;

namespace CastBook.Workbooks.Words;

/// <summary>What a column measures, and units of it.</summary>
internal static class MeasureWords
{
    /// <summary>What is measured, as a sentence says it: "no unit of …".</summary>
    /// <param name="dimension">Any but none.</param>
    public static string Of(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "weight",
        Dimension.Length => "length",
        Dimension.Volume => "volume",
        Dimension.Temperature => "temperature",
        Dimension.Time => "time",
        Dimension.Density => "density",
        Dimension.Percent => "a share",
        Dimension.Rate => "heating or cooling",
        Dimension.Power => "power",
        Dimension.Price => "price by weight",
        Dimension.Angle => "angle",
        _ => "",
    };

    /// <summary>Units of it, of the metre and of the United States where they differ.</summary>
    /// <param name="dimension">Any but none.</param>
    public static string SuchAs(Dimension dimension) => dimension switch
    {
        Dimension.Mass => "g or lb",
        Dimension.Length => "mm or in",
        Dimension.Volume => "ml or fl oz",
        Dimension.Temperature => "°C or °F",
        Dimension.Time => "min or h",
        Dimension.Density => "g/cm³",
        Dimension.Percent => "%",
        Dimension.Rate => "°C/h or °F/h",
        Dimension.Power => "kW",
        Dimension.Price => "per g or per ozt",
        Dimension.Angle => "°",
        _ => "",
    };
}
