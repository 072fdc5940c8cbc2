namespace Ledger.Storage.Upkeep;

/// <summary>Something that is wrong with a file.</summary>
/// <param name="Sentence">What, where, and what it should be.</param>
/// <param name="IsMendable">Whether it is derived from what was recorded, so that it can be derived again.</param>
internal sealed record Problem(string Sentence, bool IsMendable = false);
