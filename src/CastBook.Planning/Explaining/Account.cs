using CastBook.Planning.Findings;
using CastBook.Planning.Words;
using UnitsNet;

namespace CastBook.Planning.Explaining;

/// <summary>How one number of the plan came to be.</summary>
/// <param name="Name">What the number is, such as <c>Metal each</c>.</param>
/// <param name="Words">The formula in words, such as <c>pattern weight ÷ pattern density × alloy density</c>.</param>
/// <param name="Numbers">The formula in numbers, such as <c>1.27 g ÷ 1.13 g/cm³ × 10.36 g/cm³</c>; empty where nothing is reckoned.</param>
/// <param name="Result">The result; missing where it is not known or no number.</param>
/// <param name="Unit">Its unit.</param>
public sealed record Account(string Name, string Words, string Numbers, double? Result, string Unit)
{
    /// <summary>How the result is rounded, such as <c>up to a whole step of 5 g</c>; empty where it is not.</summary>
    public string Rounded { get; init; } = "";

    /// <summary>What it was reckoned from, in the order of the formula.</summary>
    public IReadOnlyList<AccountInput> Inputs { get; init; } = [];

    /// <summary>The range in which the rule is known to hold; empty where nothing is reckoned.</summary>
    public string ValidFor { get; init; } = "";
}

/// <summary>A number or word that a result was reckoned from.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Its value, written for a reader.</param>
/// <param name="Typed">Where the shop typed it; missing where the shop did not.</param>
/// <param name="Source">Where it comes from, where the shop did not type it.</param>
public sealed record AccountInput(string Name, string Value, Subject? Typed, string Source)
{
    /// <summary>The metal or weight that it is, which is said in the shop's unit too; missing for anything else.</summary>
    internal Mass? Weighed { get; private init; }

    /// <summary>A weight that the shop typed.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="weight">The weight.</param>
    /// <param name="typed">Where.</param>
    internal static AccountInput By(string name, Mass weight, Subject typed) => By(name, Figures.Grams(weight), typed) with { Weighed = weight };

    /// <summary>A weight that another account explains.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="weight">The weight.</param>
    /// <param name="how">How it came to be, in a few words.</param>
    internal static AccountInput Reckoned(string name, Mass weight, string how) => Reckoned(name, Figures.Grams(weight), how) with { Weighed = weight };

    /// <summary>A value that the shop typed.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    /// <param name="typed">Where.</param>
    internal static AccountInput By(string name, string value, Subject typed) => new(name, value, typed, "");

    /// <summary>A value that is built in.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    /// <param name="source">How it is known.</param>
    internal static AccountInput BuiltIn(string name, string value, string source) => new(name, value, null, AccountWords.BuiltIn(source));

    /// <summary>A setting: the shop's where it has said, else the usual value.</summary>
    /// <param name="setting">The setting's name.</param>
    /// <param name="value">Its value.</param>
    /// <param name="said">Whether the shop has said.</param>
    /// <param name="source">How the usual value is known.</param>
    internal static AccountInput Setting(string setting, string value, bool said, string source) =>
        said ? By(setting, value, Subject.Setting(setting)) : BuiltIn(setting, value, source);

    /// <summary>A number that another account explains.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="value">Its value.</param>
    /// <param name="how">How it came to be, in a few words.</param>
    internal static AccountInput Reckoned(string name, string value, string how) => new(name, value, null, how);
}
