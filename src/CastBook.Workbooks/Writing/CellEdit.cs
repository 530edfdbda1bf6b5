using System.Globalization;

namespace CastBook.Workbooks.Writing;

/// <summary>What CastBook writes into a cell. Text never becomes a formula: it is written as an inline string.</summary>
internal readonly record struct CellValue
{
    private CellValue(double? number, string? text)
    {
        Number = number;
        Text = text;
    }

    /// <summary>An empty cell.</summary>
    public static CellValue Empty => default;

    /// <summary>The number, where it is one.</summary>
    public double? Number { get; }

    /// <summary>The text, where it is one.</summary>
    public string? Text { get; }

    /// <summary>Whether there is no value.</summary>
    public bool IsEmpty => Number is null && Text is null;

    /// <summary>A number, finite.</summary>
    /// <param name="number">The number.</param>
    public static CellValue Of(double number) => double.IsFinite(number)
        ? new CellValue(number, null)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "Bug in CastBook: a cell cannot hold this number.");

    /// <summary>A number, or empty.</summary>
    /// <param name="number">The number.</param>
    public static CellValue Of(double? number) => number is { } some ? Of(some) : Empty;

    /// <summary>Text; empty text is an empty cell.</summary>
    /// <param name="text">The text.</param>
    public static CellValue Of(string? text) => string.IsNullOrEmpty(text) ? Empty : new CellValue(null, text);

    /// <summary>The cell's element.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    /// <param name="style">Cell format; null for none.</param>
    /// <param name="prefix">The part's prefix with its colon, or nothing.</param>
    public string ToXml(int row, int column, int? style, string prefix)
    {
        var address = Reading.CellRef.AddressOf(row, column);
        var format = style is > 0 ? $" s=\"{style.Value.ToString(CultureInfo.InvariantCulture)}\"" : "";
        if (Number is { } number)
        {
            return $"<{prefix}c r=\"{address}\"{format}><{prefix}v>{number.ToString("R", CultureInfo.InvariantCulture)}</{prefix}v></{prefix}c>";
        }

        if (Text is not { } text)
        {
            return $"<{prefix}c r=\"{address}\"{format}/>";
        }

        var keep = char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1]) || text.Contains('\n', StringComparison.Ordinal)
            ? " xml:space=\"preserve\"" : "";
        return $"<{prefix}c r=\"{address}\"{format} t=\"inlineStr\"><{prefix}is><{prefix}t{keep}>{XmlText.EscapeCell(text)}</{prefix}t></{prefix}is></{prefix}c>";
    }
}

/// <summary>A value for one cell. An existing cell keeps its own format.</summary>
/// <param name="Column">Column, from 1.</param>
/// <param name="Value">The value.</param>
/// <param name="NewStyle">Cell format where the cell does not exist yet.</param>
internal readonly record struct CellEdit(int Column, CellValue Value, int? NewStyle);
