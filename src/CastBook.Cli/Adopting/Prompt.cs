using System.Globalization;
using CastBook.Cli.Words;
using CastBook.Workbooks.Adopting;

namespace CastBook.Cli.Adopting;

/// <summary>Asks on a terminal, a question a line; Enter alone leaves a question open, or keeps what was answered before.</summary>
/// <param name="input">Where answers are typed.</param>
/// <param name="output">Where questions are put.</param>
internal sealed class Prompt(TextReader input, TextWriter output)
{
    /// <summary>Says something.</summary>
    /// <param name="line">The line.</param>
    public void Say(string line) => output.WriteLine(line);

    /// <summary>Asks for words.</summary>
    /// <param name="question">The question.</param>
    /// <param name="was">What was answered before; missing where nothing was.</param>
    public string? Words(string question, string? was = null)
    {
        output.Write(was is null ? $"{question}: " : $"{question} [{was}]: ");
        return input.ReadLine()?.Trim() is { Length: > 0 } typed ? typed : was;
    }

    /// <summary>Asks for one of a few words, by word or by number.</summary>
    /// <param name="question">The question.</param>
    /// <param name="choices">The words.</param>
    /// <param name="about">What it is about, by which words of other languages are known.</param>
    /// <param name="was">What was answered before; missing where nothing was.</param>
    public string? Choice(string question, IReadOnlyList<string> choices, string about, string? was = null)
    {
        var offered = string.Join(", ", choices.Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1} {c}")));
        while (Words($"{question} ({offered})", was) is { } typed)
        {
            var chosen = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? choices.ElementAtOrDefault(number - 1)
                : choices.FirstOrDefault(c => c.Equals(typed, StringComparison.OrdinalIgnoreCase)) ?? TypedAnswer.Word(about, typed);
            if (chosen is not null)
            {
                return chosen;
            }

            Say(QuestionWords.TypeWord(offered, was is null));
        }

        return null;
    }

    /// <summary>Asks for a number.</summary>
    /// <param name="question">The question.</param>
    /// <param name="unit">The unit it is counted in; empty for a count.</param>
    /// <param name="was">What was answered before; missing where nothing was.</param>
    /// <param name="mayBeZero">Whether 0 is an answer.</param>
    /// <param name="likely">Between which numbers an answer may lie; another was meant in another unit, or mistyped.</param>
    public double? Number(string question, string unit, double? was = null, bool mayBeZero = false, (double Least, double Most)? likely = null)
    {
        var shown = was?.ToString("0.###", CultureInfo.InvariantCulture);
        while (Words(question, shown) is { } typed)
        {
            if (typed == shown)
            {
                return was;
            }

            if (TypedAnswer.Number(typed, unit) is { } number && (number > 0 || (number == 0 && mayBeZero)))
            {
                if (likely is not var (least, most) || (number >= least && number <= most))
                {
                    return number;
                }

                Say(QuestionWords.NotLikely(number, least, most, unit));
                continue;
            }

            Say(unit.Length == 0 ? QuestionWords.TypeCount(was is null) : QuestionWords.TypeNumber(unit, was is null));
        }

        return null;
    }
}
