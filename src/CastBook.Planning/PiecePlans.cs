using System.Collections;

namespace CastBook.Planning;

/// <summary>The answers of all rows, each put together when it is asked for: a long list has a hundred thousand of them.</summary>
/// <param name="count">How many rows there are.</param>
internal sealed class PiecePlans(int count) : IReadOnlyList<PiecePlan>
{
    private const byte ToCome = 0x80;

    private readonly byte[] standing = new byte[count];
    private readonly double[] metalGrams = new double[count];
    private readonly Dictionary<int, PiecePlacing> placings = [];

    /// <inheritdoc/>
    public int Count => standing.Length;

    /// <inheritdoc/>
    public PiecePlan this[int index] => new()
    {
        Id = index,
        Status = (PieceStatus)(standing[index] & ~ToCome),
        IsToCome = (standing[index] & ToCome) != 0,
        MetalEach = BareQuantity.Mass(metalGrams[index]),
        Placing = placings.GetValueOrDefault(index, PiecePlacing.None),
    };

    /// <summary>Takes a row's answer down.</summary>
    /// <param name="answer">The answer.</param>
    public void Set(PiecePlan answer)
    {
        standing[answer.Id] = (byte)((byte)answer.Status | (answer.IsToCome ? ToCome : 0));
        metalGrams[answer.Id] = BareQuantity.Of(answer.MetalEach);
        if (answer.Placing != PiecePlacing.None)
        {
            placings[answer.Id] = answer.Placing;
        }
    }

    /// <inheritdoc/>
    public IEnumerator<PiecePlan> GetEnumerator()
    {
        for (var index = 0; index < Count; index++)
        {
            yield return this[index];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
