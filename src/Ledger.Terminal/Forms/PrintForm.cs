using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Terminal.Forms;

/// <summary>A session of printing: final prints, work prints and test strips of one paper.</summary>
internal sealed class PrintForm : FormModel
{
    private readonly Holdings _holdings;

    public PrintForm(ILedger ledger)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Paper = new("Paper", 16, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Where(item => item.IsPaper).Select(item => item.Code),
            Hint = "An item whose role is rc paper or fibre paper.",
        };
        Paper.Offer(Paper.Choices().FirstOrDefault());
        Bath = new("Fixer", 10, FieldKind.Choice)
        {
            Choices = () => ["", .. Fixers.Select(bath => bath.Code)],
            Hint = "The fixer for paper; empty for the only one.",
        };
        PerSheet.Offer("4");
        Session.Offer(ledger.Prints(ledger.Today, null, 1) is [var last] ? NextName.After(last.Session) : "P1");
        Rows = [[Date, Session, Paper], [Final, Work], [Cut, Strips, PerSheet], [Bath], [Note]];
    }

    public override string Title => "Print session";

    public override IReadOnlyList<string> Purpose =>
    [
        "Paper and test strips go through the baths for paper, by area; paper never goes through a bath for film.",
        "What a litre of fixer takes depends on the paper and on how long the prints are to last: each basis is a setting of the fixer.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Final;

    public FormField Session { get; } = new("Session", 8) { Hint = "A name of its own, such as P12." };

    public FormField Paper { get; }

    public FormField Final { get; } = new("Final prints", 5, FieldKind.Figure) { Hint = "Whole sheets." };

    public FormField Work { get; } = new("Work prints", 5, FieldKind.Figure) { Hint = "Whole sheets." };

    public FormField Cut { get; } = new("Sheets cut up", 5, FieldKind.Figure)
    {
        Hint = "Taken from the box for strips; empty when one was cut before.",
    };

    public FormField Strips { get; } = new("Strips", 5, FieldKind.Figure) { Hint = "How many went through the baths." };

    public FormField PerSheet { get; } = new("of", 4, FieldKind.Figure) { Hint = "Into how many strips a sheet is cut." };

    public FormField Bath { get; }

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var (paper, session) = (answers.Needed(Paper), answers.Needed(Session));
        int Count(FormField field) => field.IsEmpty ? 0 : answers.Whole(field);
        var lines = new List<PrintLine>
        {
            new() { Item = paper, Sheets = Count(Final), Purpose = PrintPurpose.Final },
            new() { Item = paper, Sheets = Count(Work), Purpose = PrintPurpose.Work },
            new()
            {
                Item = paper, Sheets = Count(Cut), Strips = Count(Strips), StripsPerSheet = Count(PerSheet), Purpose = PrintPurpose.Strip,
            },
        };
        lines.RemoveAll(line => line.Sheets == 0 && line.Strips == 0);
        if (lines.Count == 0)
            answers.Problem("Nothing was printed yet");
        return new PrintSession
        {
            Key = EntryKey,
            Date = answers.Date(Date),
            Session = session,
            Lines = lines,
            Bath = Answers.Optional(Bath),
            Note = Note.Text,
        };
    }

    private IEnumerable<Bath> Fixers =>
        _holdings.WorkingBaths.Where(bath => bath is { Material: BathMaterial.Paper, Role: ItemRole.Fixer });
}
