namespace CastBook.Workbooks.Reading.Grid;

/// <summary>A long list in pages: growing it copies nothing and leaves nothing behind.</summary>
/// <typeparam name="T">What it holds.</typeparam>
internal sealed class Pages<T>
    where T : unmanaged
{
    private const int Bits = 12;
    private const int PageSize = 1 << Bits;

    private readonly List<T[]> pages = [];
    private T[] last = [];

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>One of them.</summary>
    /// <param name="index">Index, from 0.</param>
    public T this[int index] => pages[index >> Bits][index & (PageSize - 1)];

    /// <summary>Adds one at the end.</summary>
    /// <param name="item">The item.</param>
    public void Add(T item)
    {
        var at = Count & (PageSize - 1);
        if (at == 0)
        {
            pages.Add(last = new T[PageSize]);
        }

        last[at] = item;
        Count++;
    }
}
