namespace Ledger.Storage.Upkeep;

/// <summary>Something that is wrong with a file.</summary>
/// <param name="Sentence">What, where, and what it should be.</param>
/// <param name="IsMendable">Whether it is derived from what was recorded, so that it can be derived again.</param>
/// <param name="IsOfWords">Whether only how something is told is other than this version tells it, and nothing is
/// wrong.</param>
internal sealed record Problem(string Sentence, bool IsMendable = false, bool IsOfWords = false);
