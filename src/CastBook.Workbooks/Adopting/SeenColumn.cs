namespace CastBook.Workbooks.Adopting;

/// <summary>A column of a list as a first look sees it.</summary>
/// <param name="Letter">Its letter.</param>
/// <param name="Heading">Its heading as typed.</param>
/// <param name="Field">The field it is read as, a constant of <see cref="Planning.Findings.PieceField"/>; missing where it is none.</param>
/// <param name="Nearest">The field that its heading comes nearest to, where it is read as none and something comes near.</param>
public sealed record SeenColumn(string Letter, string Heading, string? Field, string? Nearest);
