namespace Ledger.App.Commands.Record;

/// <summary>What an entry changed.</summary>
/// <param name="Number">Its number; null in a dry run.</param>
/// <param name="Posting">What it changed.</param>
/// <param name="Terms">How what was said is written.</param>
internal sealed record PostingShown(long? Number, Posting Posting, ReadingTerms Terms);

/// <summary>
/// What an entry changed, as a document: its number, what was said, which `record KIND --input` takes again, every
/// bottle, box and bath before and after, and what the user should know.
/// </summary>
internal static class PostingShape
{
    /// <summary>The document of an entry of a kind.</summary>
    public static Shape<PostingShown> Of(EntryKind kind) => new Shape<PostingShown>()
        .Whole("entry", shown => shown.Number, "the entry's number; null in a dry run")
        .Text("summary", shown => shown.Posting.Summary)
        .Raw("said", (shown, json) => EntryJson.Write(shown.Posting.Entry, shown.Terms with { IsTyped = false }, json),
            json => EntrySchema.Write(kind, json), "what was said, as --input takes it again")
        .Table("changes", (shown, _) => shown.Posting.Effects, new Shape<Effect>()
            .Text("what", effect => effect.What)
            .Text("before", effect => effect.Before)
            .Text("after", effect => effect.After))
        .Texts("remarks", shown => shown.Posting.Remarks);
}
