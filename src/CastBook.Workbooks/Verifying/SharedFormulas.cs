using CastBook.Workbooks.Xml;

namespace CastBook.Workbooks.Verifying;

/// <summary>Formulas that cells of a sheet share: one cell spells each out, the others only name it.</summary>
internal sealed class SharedFormulas
{
    private readonly HashSet<int> used = [];
    private readonly HashSet<int> spelled = [];

    /// <summary>Those that no cell spells out.</summary>
    public IEnumerable<int> WithoutMaster => used.Where(s => !spelled.Contains(s)).Order();

    /// <summary>Looks at the whole element of a cell.</summary>
    /// <param name="element">Its bytes.</param>
    public void Look(ReadOnlySpan<byte> element)
    {
        var at = element.IndexOf("shared"u8);
        var start = at < 0 ? -1 : element[..at].LastIndexOf((byte)'<');
        if (start < 0)
        {
            return;
        }

        var rest = element[start..];
        var end = rest.IndexOf((byte)'>') + 1;
        if (!TagAttributes.TryGet(rest[..end], "t"u8, out var type) || !type.SequenceEqual("shared"u8) || TagAttributes.Number(rest[..end], "si"u8) is not { } index)
        {
            return;
        }

        used.Add(index);
        if (rest[end - 2] != (byte)'/' && rest[end] != (byte)'<')
        {
            spelled.Add(index);
        }
    }
}
