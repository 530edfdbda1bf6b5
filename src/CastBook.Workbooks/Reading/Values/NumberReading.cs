namespace CastBook.Workbooks.Reading.Values;

/// <summary>What came of reading a cell as a number.</summary>
internal enum ReadOutcome
{
    /// <summary>The cell is empty or says so with a dash.</summary>
    Missing,

    /// <summary>It is a number.</summary>
    Read,

    /// <summary>It is no number.</summary>
    NotANumber,

    /// <summary>It may be one of two numbers.</summary>
    Undecided,

    /// <summary>It shows an error such as <c>#N/A</c>.</summary>
    Error,

    /// <summary>It has a formula and no value saved with it.</summary>
    NoValue,

    /// <summary>It names a unit of something else.</summary>
    WrongUnit,

    /// <summary>It names a unit that may be one of two.</summary>
    AmbiguousUnit,

    /// <summary>It shows a date, which a program made of what was typed.</summary>
    Date,
}

/// <summary>A cell read as a number, in the base unit of its dimension.</summary>
/// <param name="Outcome">What came of it.</param>
/// <param name="Value">The number, where it was read; always finite.</param>
/// <param name="Typed">The number before any unit was applied.</param>
/// <param name="Assumed">What was taken for granted.</param>
internal readonly record struct NumberReading(ReadOutcome Outcome, double Value = 0, double Typed = 0, NumberAssumptions Assumed = NumberAssumptions.None)
{
    /// <summary>What the unit it was typed in adds to each value; only temperatures have such a unit.</summary>
    public double Shift { get; init; }

    /// <summary>The value as a difference of two, where there is one: 18 °F is a step of 10 °C.</summary>
    public double? StepOrNull => Outcome == ReadOutcome.Read ? Value - Shift : null;

    /// <summary>The value, where there is one.</summary>
    public double? ValueOrNull => Outcome == ReadOutcome.Read ? Value : null;
}
