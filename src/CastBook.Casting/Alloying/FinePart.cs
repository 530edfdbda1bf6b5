using UnitsNet;

namespace CastBook.Casting.Alloying;

/// <summary>An amount of one fine metal.</summary>
/// <param name="Symbol">Its chemical symbol.</param>
/// <param name="Mass">How much of it.</param>
public sealed record FinePart(string Symbol, Mass Mass);
