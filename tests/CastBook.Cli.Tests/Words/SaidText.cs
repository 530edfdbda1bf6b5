using System.Reflection;
using System.Text.RegularExpressions;

namespace CastBook.Cli.Tests.Words;

/// <summary>Tells what is said to a reader from what is a name, and which message is said where.</summary>
internal static partial class SaidText
{
    /// <summary>Two words or more; a heading of a shop sheet with its unit is a name and not said, nor are names of the file format and of functions.</summary>
    /// <param name="text">A literal as it stands in the source.</param>
    public static bool IsSaid(string text) => !Heading().IsMatch(text) && !Format().IsMatch(text) && !OfFormat().IsMatch(text) && Words(text) > 1;

    /// <summary>One word is enough; formats of days and hours are none.</summary>
    /// <param name="text">A literal as it stands in the source.</param>
    public static bool HasWord(string text) => !Format().IsMatch(text) && Words(text) > 0;

    /// <summary>The members of message classes, as code names them.</summary>
    /// <param name="types">The classes.</param>
    public static IReadOnlyList<string> MessagesOf(IEnumerable<Type> types) =>
    [
        .. types.SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Where(m => m is PropertyInfo or MethodInfo { IsSpecialName: false }).Select(m => $"{t.Name}.{m.Name}")).Distinct(),
    ];

    /// <summary>Whether code says a message.</summary>
    /// <param name="code">The code.</param>
    /// <param name="message">The message, as code names it.</param>
    public static bool Says(string code, string message) => Regex.IsMatch(code, $@"\b{Regex.Escape(message)}\b");

    private static int Words(string text) => text.Replace("\\n", " ", StringComparison.Ordinal).Split(' ').Count(w => Word().IsMatch(w));

    [GeneratedRegex(@"^[(\""']*[A-Za-z]+('[a-z]+)?[.,;:!?)\""']*$")]
    private static partial Regex Word();

    [GeneratedRegex(@"^[A-Z][a-z]+( [a-z]+)* \((mm|g|per g|ml|min|h|kW|°C|°C/h|g/cm³)\)$")]
    private static partial Regex Heading();

    // A small letter before a capital, as in "minLength", or no small letter at all.
    [GeneratedRegex(@"\b[a-z]{2,}[A-Z][a-z]|^[^a-z]+$")]
    private static partial Regex OfFormat();

    [GeneratedRegex(@"^[dMmyHhs :,-]+$")]
    private static partial Regex Format();
}
