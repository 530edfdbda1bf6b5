using System.Text;

namespace CastBook.Workbooks.Reading.Grid;

/// <summary>Text that mostly comes in one piece: a builder is made only for the second.</summary>
internal struct TextParts
{
    private string? first;
    private StringBuilder? all;

    public readonly string Text => all?.ToString() ?? first ?? "";

    public readonly int Length => all?.Length ?? first?.Length ?? 0;

    public void Add(string part)
    {
        if (first is null)
        {
            first = part;
        }
        else
        {
            all ??= new StringBuilder(first);
            all.Append(part);
        }
    }
}
