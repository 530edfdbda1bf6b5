namespace CastBook.Workbooks.Reading.Headings;

/// <summary>What a column measures, and the unit its values are brought to.</summary>
internal enum Dimension
{
    /// <summary>No unit: text, counts, yes and no.</summary>
    None,

    /// <summary>In grams.</summary>
    Mass,

    /// <summary>In millimetres.</summary>
    Length,

    /// <summary>In millilitres.</summary>
    Volume,

    /// <summary>In degrees Celsius.</summary>
    Temperature,

    /// <summary>In minutes.</summary>
    Time,

    /// <summary>In grams per cubic centimetre.</summary>
    Density,

    /// <summary>In per cent.</summary>
    Percent,

    /// <summary>In degrees Celsius per hour.</summary>
    Rate,

    /// <summary>In kilowatts.</summary>
    Power,

    /// <summary>Money per gram.</summary>
    Price,

    /// <summary>In degrees of angle.</summary>
    Angle,
}
