namespace CastBook.Casting.Metals;

/// <summary>Why a text is no composition.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Text">The symbol or the number it is about, as <see cref="Kind"/> says; empty where it is about the whole.</param>
public sealed record CompositionFault(CompositionFaultKind Kind, string Text = "");

/// <summary>What can be wrong with a composition.</summary>
public enum CompositionFaultKind
{
    /// <summary>There is no element in it.</summary>
    Empty,

    /// <summary>A number, or what stands for one, has no element before it.</summary>
    NumberWithoutElement,

    /// <summary>A word is not the symbol of a known element.</summary>
    UnknownSymbol,

    /// <summary>An element stands in it twice.</summary>
    ElementTwice,

    /// <summary>An element has no number that can be read after it.</summary>
    NoNumber,

    /// <summary>The part of an element is less than zero.</summary>
    BelowZero,

    /// <summary>The parts add up to this instead of 1000.</summary>
    WrongSum,

    /// <summary>The parts add up to this, which is about 100: they are percent.</summary>
    SumOfPercent,
}
