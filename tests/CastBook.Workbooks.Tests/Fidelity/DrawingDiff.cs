using System.Text;
using System.Text.RegularExpressions;

namespace CastBook.Workbooks.Tests.Fidelity;

/// <summary>Compares the legacy drawing behind notes, which need not be XML: without the shapes of our notes it is the same text.</summary>
internal static partial class DrawingDiff
{
    /// <param name="before">The drawing as it was.</param>
    /// <param name="after">The drawing now.</param>
    /// <param name="ours">Cells of our notes before and after, rows and columns from 1.</param>
    public static IReadOnlyList<string> Losses(byte[] before, byte[] after, (IReadOnlySet<(int, int)> Before, IReadOnlySet<(int, int)> After) ours)
    {
        var was = Without(Text(before), ours.Before);
        var now = Without(Text(after), ours.After);
        return was == now ? [] : [$"the drawing was {was}, is {now}"];
    }

    private static string Text(byte[] part) => part is [0xFF or 0xFE, _, ..] ? RawXml.TextOf(part) : Encoding.Latin1.GetString(part);

    private static string Without(string drawing, IReadOnlySet<(int, int)> notes)
    {
        var kept = Shape().Replace(drawing, m => IsNoteOf(m.Value, notes) ? "" : m.Value);
        return ShapeType().Replace(kept, "");
    }

    private static bool IsNoteOf(string shape, IReadOnlySet<(int, int)> notes) =>
        shape.Contains("\"Note\"", StringComparison.Ordinal) && Row().Match(shape) is { Success: true } row && Column().Match(shape) is { Success: true } column
        && notes.Contains((Number(row) + 1, Number(column) + 1));

    private static int Number(Match match) => int.Parse(match.Groups[1].ValueSpan, System.Globalization.CultureInfo.InvariantCulture);

    [GeneratedRegex(@"<v:shape\s(?:[^>]*[^/>])?>.*?</v:shape>", RegexOptions.Singleline)]
    private static partial Regex Shape();

    /// <summary>The type that notes refer to, in the words in which CastBook writes it; a shop's own is written otherwise.</summary>
    [GeneratedRegex("<v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>")]
    private static partial Regex ShapeType();

    [GeneratedRegex("<x:Row>([0-9]+)</x:Row>")]
    private static partial Regex Row();

    [GeneratedRegex("<x:Column>([0-9]+)</x:Column>")]
    private static partial Regex Column();
}
