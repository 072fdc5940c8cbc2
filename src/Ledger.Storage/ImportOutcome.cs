namespace Ledger.Storage;

/// <summary>What became of an import. When anything was refused, nothing was written.</summary>
/// <param name="Posted">How many entries were written, or would have been in a dry run.</param>
/// <param name="AlreadyThere">How many stood there already.</param>
/// <param name="Refused">The entries that were refused.</param>
/// <param name="Remarks">What the rules remarked on entries that they accepted.</param>
/// <param name="Changed">Those of them that stood there already and say something else there; nothing of them was
/// written.</param>
public sealed record ImportOutcome(
    int Posted, int AlreadyThere, IReadOnlyList<RefusedEntry> Refused, IReadOnlyList<EntryRemark> Remarks,
    IReadOnlyList<ChangedEntry> Changed);

/// <summary>An entry that stands in the journal and is told otherwise.</summary>
/// <param name="Index">Its position in the sequence, counting from 0.</param>
/// <param name="Number">Its number in the journal.</param>
/// <param name="Key">Its key in the journal.</param>
/// <param name="Changes">What is told otherwise, field by field: what an amendment of it would say.</param>
/// <param name="Before">What stands in the journal in the place of each of these.</param>
public sealed record ChangedEntry(int Index, long Number, string Key, IReadOnlyList<FieldChange> Changes,
    IReadOnlyList<string> Before);

/// <summary>An entry that was refused.</summary>
/// <param name="Index">Its position in the sequence, counting from 0.</param>
/// <param name="Refusal">Why.</param>
public sealed record RefusedEntry(int Index, Refusal Refusal);

/// <summary>What the rules remarked on an entry.</summary>
/// <param name="Index">Its position in the sequence, counting from 0.</param>
/// <param name="Sentence">The remark.</param>
public sealed record EntryRemark(int Index, string Sentence);
