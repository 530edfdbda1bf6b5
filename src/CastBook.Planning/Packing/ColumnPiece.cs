namespace CastBook.Planning.Packing;

/// <summary>A piece as one sector sees it.</summary>
/// <param name="Pitch">Length of trunk.</param>
/// <param name="Tail">How far it stands up beyond that.</param>
/// <param name="Value">What one is worth; more than 0.</param>
/// <param name="Copies">How many there are.</param>
internal readonly record struct ColumnPiece(int Pitch, int Tail, long Value, int Copies);
