using CastBook.Casting.Metals;

namespace CastBook.Workbooks.Words;

/// <summary>Why a text is no composition, a sentence without its full stop.</summary>
internal static class CompositionFaultWords
{
    public static string Why(CompositionFault fault) => fault.Kind switch
    {
        CompositionFaultKind.Empty => "There is no element in it",
        CompositionFaultKind.NumberWithoutElement => $"\"{fault.Text}\" stands without an element before it",
        CompositionFaultKind.UnknownSymbol => $"\"{fault.Text}\" is not the symbol of an element known here",
        CompositionFaultKind.ElementTwice => $"{fault.Text} stands in it twice",
        CompositionFaultKind.NoNumber => $"{fault.Text} has no number that can be read after it",
        CompositionFaultKind.BelowZero => $"{fault.Text} is less than zero",
        CompositionFaultKind.WrongSum => $"The parts add up to {fault.Text}, not to 1000",
        CompositionFaultKind.SumOfPercent => $"The parts add up to {fault.Text}, which looks like percent; parts per thousand add up to 1000",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, null),
    };
}
