namespace CastBook.Templates;

/// <summary>In which units the headings of a new book ask.</summary>
public enum UnitHabit
{
    /// <summary>Grams, millimetres and degrees Celsius, on A4.</summary>
    Metric,

    /// <summary>Pennyweights, troy ounces, inches for flasks and kilns, and degrees Fahrenheit, on Letter. Pieces are measured in millimetres all the same.</summary>
    Us,
}
