using Ledger.App.Commands.Plan;
using Ledger.Storage;

namespace Ledger.App.Commands.Record;

/// <summary>record plan: a session or a trip is kept with its day, of counted sheets or of exposed ones.</summary>
internal sealed class RecordPlan : RecordKind
{
    private readonly Option<ExposedPhrase[]> _exposed = ExposedOption.New();

    public RecordPlan(Workbench bench)
        : base(bench, EntryKinds.Named("plan")!) => Options.Add(_exposed);

    protected override void Complete(EntryText text, ParseResult parse, LedgerFile ledger,
        Holdings holdings, ReadingTerms terms)
    {
        var exposed = ExposedOption.Sheets(parse.GetValue(_exposed), holdings)
            .Select(sheets => EntryWriting.Line(EntryKinds.Named("plan")!.Line!, sheets, terms)).ToList();
        for (var i = 0; i < exposed.Count; i++)
            text.Lines.Insert(i, exposed[i]);
    }
}
