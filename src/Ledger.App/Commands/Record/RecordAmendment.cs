using Ledger.Storage;

namespace Ledger.App.Commands.Record;

/// <summary>record amendment: what is typed is read by the fields of the entry that it amends.</summary>
internal sealed class RecordAmendment(Workbench bench) : RecordKind(bench, EntryKinds.Named("amendment")!)
{
    protected override Entry React(Entry entry, ParseResult parse, LedgerFile ledger, ReadingTerms terms,
        ICollection<FieldProblem> problems) =>
        entry is Amendment amendment && terms.IsTyped && ledger.Said(amendment.Number, amendment.Reference) is { } said
            ? amendment with { Changes = Amending.Typed(said, amendment.Changes, terms, problems) } : entry;
}
