namespace CastBook.Templates;

/// <summary>In which units the headings of a new book ask.</summary>
public enum UnitHabit
{
    /// <summary>Grams, millimetres and degrees Celsius, on A4.</summary>
    Metric,

    /// <summary>Pennyweights, troy ounces, pounds, inches and degrees Fahrenheit, on Letter. Only a test cube is measured in millimetres all the same.</summary>
    Us,
}
