using CastBook.Planning.Findings;
using CastBook.Workbooks.Words;

namespace CastBook.Workbooks.Reports;

/// <summary>The fields of a piece in words.</summary>
public static class PieceWords
{
    /// <summary>The words of a field.</summary>
    /// <param name="field">A constant of <see cref="PieceField"/>.</param>
    public static string Of(string field) => FieldWords.Of(field);
}
