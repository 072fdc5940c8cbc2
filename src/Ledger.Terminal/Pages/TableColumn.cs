namespace Ledger.Terminal.Pages;

/// <summary>A column of a table. The first columns are the ones a narrow screen keeps.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Most">The widest it is drawn.</param>
/// <param name="IsFigure">Whether it holds figures, which stand at the right.</param>
/// <param name="Least">How far a text may be cut where there is little room; null for what must be read whole.</param>
internal sealed record TableColumn(string Heading, int Most, bool IsFigure = false, int? Least = null);
