using CastBook.Planning.Explaining;
using CastBook.Planning.Findings;
using CastBook.Workbooks.Reading;

namespace CastBook.Workbooks.Explaining;

/// <summary>How one cell came to be, or why there is nothing to tell of it.</summary>
/// <param name="Cell">The cell.</param>
public sealed record CellExplanation(CellRef Cell)
{
    /// <summary>What its line is about: a piece, a flask, an alloy; empty where it is none of ours.</summary>
    public string About { get; init; } = "";

    /// <summary>The number that filling writes into it; missing where that is text or nothing.</summary>
    public double? Number { get; init; }

    /// <summary>The text that filling writes into it; empty where that is a number or nothing.</summary>
    public string Text { get; init; } = "";

    /// <summary>How it came to be; missing where nothing is worked out in it.</summary>
    public Account? Account { get; init; }

    /// <summary>What it was worked out from, each with the place it comes from.</summary>
    public IReadOnlyList<ExplainedInput> Inputs { get; init; } = [];

    /// <summary>What else there is to know of the cell, in a sentence: whose it is, why it is empty, what stands there instead.</summary>
    public string Note { get; init; } = "";

    /// <summary>What was found about its line, stops first, where that is why it says nothing.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}

/// <summary>A number or word that a result was worked out from.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Its value.</param>
/// <param name="From">Where it comes from: a cell, a file, a variable, what is built in.</param>
public sealed record ExplainedInput(string Name, string Value, string From);
