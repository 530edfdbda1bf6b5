using System.Globalization;

namespace CastBook.Cli.Adopting;

/// <summary>Asks on a terminal, a question a line; Enter alone leaves a question open.</summary>
/// <param name="input">Where answers are typed.</param>
/// <param name="output">Where questions are put.</param>
internal sealed class Prompt(TextReader input, TextWriter output)
{
    /// <summary>Says something.</summary>
    /// <param name="line">The line.</param>
    public void Say(string line) => output.WriteLine(line);

    /// <summary>Asks for words.</summary>
    /// <param name="question">The question.</param>
    public string? Words(string question)
    {
        output.Write($"{question}: ");
        return input.ReadLine()?.Trim() is { Length: > 0 } typed ? typed : null;
    }

    /// <summary>Asks for one of a few words, by word or by number.</summary>
    /// <param name="question">The question.</param>
    /// <param name="choices">The words.</param>
    public string? Choice(string question, IReadOnlyList<string> choices)
    {
        var offered = string.Join(", ", choices.Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {c}")));
        while (Words($"{question} ({offered})") is { } typed)
        {
            var chosen = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? choices.ElementAtOrDefault(number - 1)
                : choices.FirstOrDefault(c => c.Equals(typed, StringComparison.OrdinalIgnoreCase));
            if (chosen is not null)
            {
                return chosen;
            }

            Say($"  Type one of the words or its number: {offered}. Enter alone leaves it open.");
        }

        return null;
    }

    /// <summary>Asks for a number.</summary>
    /// <param name="question">The question, with its unit.</param>
    /// <param name="mayBeZero">Whether 0 is an answer.</param>
    public double? Number(string question, bool mayBeZero = false)
    {
        while (Words(question) is { } typed)
        {
            if (Read(typed) is { } number && (number > 0 || (number == 0 && mayBeZero)))
            {
                return number;
            }

            Say("  Type the number in digits, such as 12.4 or 1500, without its unit. Enter alone leaves it open.");
        }

        return null;
    }

    /// <summary>A number with a point or a comma; one that may mean thousands is none.</summary>
    private static double? Read(string typed)
    {
        var comma = typed.IndexOf(',', StringComparison.Ordinal);
        if (comma >= 0 && typed.Length - comma == 4)
        {
            return null;
        }

        return double.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
