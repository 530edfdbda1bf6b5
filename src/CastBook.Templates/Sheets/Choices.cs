namespace CastBook.Templates.Sheets;

/// <summary>The words of a drop-down list: fixed ones, or a column of another sheet.</summary>
internal sealed record Choices
{
    private const int LastRow = 200;

    private Choices(string formula, string? sheet) => (Formula, Sheet) = (formula, sheet);

    /// <summary>The list as a validation formula.</summary>
    public string Formula { get; }

    /// <summary>The sheet that the words come from; missing for fixed words.</summary>
    public string? Sheet { get; }

    /// <summary>Fixed words.</summary>
    /// <param name="words">The words; none holds a comma.</param>
    public static Choices Of(params string[] words) => new($"\"{string.Join(',', words)}\"", null);

    /// <summary>The names that stand in a column of a sheet, under its heading in row 1.</summary>
    /// <param name="sheet">The sheet, a name without blanks.</param>
    /// <param name="column">The column's letter.</param>
    /// <remarks>The list ends with the last name: a list with empty lines at its end opens scrolled to them.</remarks>
    public static Choices From(string sheet, string column = "A") =>
        new($"OFFSET({sheet}!${column}$2,0,0,MAX(1,COUNTA({sheet}!${column}$2:${column}${LastRow})),1)", sheet);
}
