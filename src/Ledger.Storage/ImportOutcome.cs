using Ledger.Core.Journal;

namespace Ledger.Storage;

/// <summary>What became of an import. When anything was refused, nothing was written.</summary>
/// <param name="Posted">How many entries were written, or would have been in a dry run.</param>
/// <param name="AlreadyThere">How many stood there already.</param>
/// <param name="Refused">The entries that were refused.</param>
public sealed record ImportOutcome(int Posted, int AlreadyThere, IReadOnlyList<RefusedEntry> Refused);

/// <summary>An entry that was refused.</summary>
/// <param name="Index">Its position in the sequence, counting from 0.</param>
/// <param name="Refusal">Why.</param>
public sealed record RefusedEntry(int Index, Refusal Refusal);
