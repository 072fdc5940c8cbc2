using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;

namespace Ledger.Terminal.Forms;

/// <summary>A waste jug is begun.</summary>
internal sealed class JugStartForm : FormModel
{
    public JugStartForm(ILedger ledger)
        : base(ledger)
    {
        Jug.Offer(ledger.JugsOn(ledger.Today) is [.., var last] ? NextName.After(last.Code) : "J1");
        Contents.Offer("used fixer");
        Rows = [[Date, Jug], [Size, Contents], [Note]];
    }

    public override string Title => "New waste jug";

    public override IReadOnlyList<string> Purpose =>
        ["A jug in which used solutions wait to be handed over. Label it, and keep unlike wastes apart."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Size;

    public FormField Jug { get; } = new("Jug", 10) { Hint = "What is written on it." };

    public FormField Size { get; } = new("Holds, ml", 8, FieldKind.Figure) { Hint = "What it holds when it is full." };

    public FormField Contents { get; } = new("For", 24) { Hint = "What goes into it." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new JugStart
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Jug = answers.Needed(Jug),
        Size = answers.Needed(Size).Length == 0 ? default : answers.Volume(Size) ?? default,
        Contents = answers.Needed(Contents),
        Note = Note.Text,
    };
}

/// <summary>Used solution goes into a jug.</summary>
internal sealed class JugFillingForm : FormModel
{
    public JugFillingForm(ILedger ledger, string jug)
        : base(ledger)
    {
        Jug.Offer(jug);
        Rows = [[Date, Jug], [Volume, What], [Note]];
    }

    public override string Title => "Fill a jug";

    public override IReadOnlyList<string> Purpose =>
        ["Used solution goes into a jug. A bath that is poured out names its jug in its own form."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Volume;

    public FormField Jug { get; } = new("Jug", 10);

    public FormField Volume { get; } = new("Volume, ml", 8, FieldKind.Figure);

    public FormField What { get; } = new("What", 24) { Hint = "Such as first rinse." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new JugFilling
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Jug = answers.Needed(Jug),
        Volume = answers.Needed(Volume).Length == 0 ? default : answers.Volume(Volume) ?? default,
        What = answers.Needed(What),
        Note = Note.Text,
    };
}

/// <summary>A jug is handed over.</summary>
internal sealed class JugHandoverForm : FormModel
{
    public JugHandoverForm(ILedger ledger, string jug)
        : base(ledger)
    {
        Jug.Offer(jug);
        Rows = [[Date, Jug], [To], [Note]];
    }

    public override string Title => "Hand over a jug";

    public override IReadOnlyList<string> Purpose =>
        ["Where the jug went. Whether that place may take it is for the local rules and the maker's safety data sheet to say."];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => To;

    public FormField Jug { get; } = new("Jug", 10);

    public FormField To { get; } = new("To", 40) { Hint = "The place that took it." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers) => new JugHandover
    {
        Key = EntryKey,
        Date = answers.Date(Date),
        Jug = answers.Needed(Jug),
        To = answers.Needed(To),
        Note = Note.Text,
    };
}
