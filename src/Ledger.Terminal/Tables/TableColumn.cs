namespace Ledger.Terminal.Tables;

/// <summary>A column of a table. The first columns are the ones a narrow screen keeps.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Least">The narrowest it is drawn.</param>
/// <param name="Most">The widest it is drawn.</param>
/// <param name="IsFigure">Whether it holds figures, which stand at the right.</param>
internal sealed record TableColumn(string Heading, int Least, int Most, bool IsFigure = false);
