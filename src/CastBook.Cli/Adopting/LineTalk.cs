using CastBook.Workbooks.Adopting;

namespace CastBook.Cli.Adopting;

/// <summary>Asks for the cells of one line of a shop sheet; of a line that stands there, only what changes is taken down.</summary>
/// <param name="prompt">Where it is asked.</param>
/// <param name="sheet">The sheet.</param>
/// <param name="heading">The heading of the column of names.</param>
/// <param name="was">The name under which the line stands; missing for a new one.</param>
internal sealed class LineTalk(Prompt prompt, string sheet, string heading, string? was)
{
    private readonly Dictionary<string, object> values = [];

    /// <summary>Asks for a number; gives it, or what it was before.</summary>
    /// <param name="column">The heading of its column, with the unit.</param>
    /// <param name="question">The question.</param>
    /// <param name="before">What stands there; missing where nothing does.</param>
    /// <param name="likely">Between which numbers an answer may lie.</param>
    public double? Number(string column, string question, double? before, (double Least, double Most)? likely = null)
    {
        var unit = column.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? column[(at + 1)..].TrimEnd(')') : "";
        var number = prompt.Number(question, unit, before, likely: likely);
        Put(column, number, before);
        return number;
    }

    /// <summary>Asks for one of a few words; gives it, or what it was before.</summary>
    /// <param name="column">The heading of its column.</param>
    /// <param name="question">The question.</param>
    /// <param name="choices">The words.</param>
    /// <param name="before">What stands there; missing where nothing does.</param>
    /// <param name="likely">What is offered where nothing stands there.</param>
    public string? Choice(string column, string question, IReadOnlyList<string> choices, string? before, string? likely = null)
    {
        var chosen = prompt.Choice(question, choices, column.ToLowerInvariant(), before ?? likely);
        Put(column, chosen, before);
        return chosen;
    }

    /// <summary>Takes down a value that was found otherwise.</summary>
    /// <param name="column">The heading of its column.</param>
    /// <param name="value">The value; missing for none.</param>
    /// <param name="before">What stands there; missing where nothing does.</param>
    public void Put(string column, object? value, object? before = null)
    {
        if (value is not null && !value.Equals(before))
        {
            values[column] = value;
        }
    }

    /// <summary>Hands over what was answered.</summary>
    /// <param name="answers">Takes it.</param>
    /// <param name="name">The line's name.</param>
    public void Finish(ShopAnswers answers, string name)
    {
        if (was is null)
        {
            answers.Add(sheet, new Dictionary<string, object>([new(heading, name), .. values]));
            return;
        }

        Put(heading, name, was);
        answers.Change(sheet, was, values);
    }
}
