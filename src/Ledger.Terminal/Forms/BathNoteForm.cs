using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;

namespace Ledger.Terminal.Forms;

/// <summary>What is learned about a bath beside clearing tests: what is seen, a silver strip, a residual test, what it stands in.</summary>
internal sealed class BathNoteForm : FormModel
{
    private static readonly string[] Kinds = ["seen", "indicator", "silver strip", "residual silver", "residual hypo", "control strip", "stands in"];

    private readonly Holdings _holdings;

    public BathNoteForm(ILedger ledger, string? bath)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        Bath = new("Bath", 10, FieldKind.Choice)
        {
            Choices = () => _holdings.Baths.Select(one => one.Code),
            Hint = "The bath it is about.",
        };
        Bath.Offer(bath ?? _holdings.Baths.FirstOrDefault()?.Code);
        Kind.Offer(Kinds[0]);
        Found = new("Found", 24, FieldKind.Choice)
        {
            Choices = () => KindAt switch
            {
                0 => ["yellow", "specks", "white precipitate", "smell"],
                1 => [_holdings.Bath(Bath!.Text)?.Indicator ?? "purple", "yellow"],
                3 or 4 => ["no stain", "faint stain", "stain"],
                5 => ["within limits"],
                6 => WorkingContainers.Names,
                _ => [],
            },
            Hint = "The sign, the colour, silver in g/l, the test's result, or the container.",
        };
        Rows = [[Date, Bath], [Kind, Found], [Session, Passed], [Note]];
    }

    public override string Title => "Seen or measured";

    public override IReadOnlyList<string> Purpose =>
    [
        "What is seen or smelled ends the bath's use before it is poured out. A silver strip ends it at the limit you have set.",
        "An indicator ends it at the colour its item names. A residual test says whether fixing or washing was enough.",
        "A control strip says whether a replenished developer is as it was. What a bath stands in decides how long it keeps.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    public override FormField First => Kind;

    public FormField Bath { get; }

    public FormField Kind { get; } = new("What", 16, FieldKind.Choice) { Choices = () => Kinds, Hint = "Up and Down choose." };

    public FormField Found { get; }

    public FormField Passed { get; } = new("Good enough", 4, FieldKind.Tick)
    {
        Hint = "Passed, or within limits; or a sign after which the bath is still used.",
    };

    public FormField Session { get; } = new("Session", 8) { Hint = "The session a residual test belongs to; may be empty." };

    public FormField Note { get; } = new("Note", 50);

    protected override Entry Read(Answers answers)
    {
        var (date, bath, found) = (answers.Date(Date), answers.Needed(Bath), answers.Needed(Found));
        return answers.OneOf(Kind, Kinds) switch
        {
            0 => new BathObservation
            {
                Key = EntryKey, Date = date, Bath = bath, Sign = found, EndsUse = !Passed.IsTicked, Note = Note.Text,
            },
            1 => new IndicatorReading { Key = EntryKey, Date = date, Bath = bath, Colour = found, Note = Note.Text },
            2 => new SilverTest { Key = EntryKey, Date = date, Bath = bath, GramsPerLitre = answers.Figure(Found), Note = Note.Text },
            3 => Residual("silver"),
            4 => Residual("hypo"),
            5 => new ControlStripTest
            {
                Key = EntryKey, Date = date, Bath = bath, Result = found, IsWithinLimits = Passed.IsTicked, Note = Note.Text,
            },
            _ => new BathStorage
            {
                Key = EntryKey, Date = date, Bath = bath, Container = (WorkingContainer)answers.OneOf(Found, WorkingContainers.Names),
                Note = Note.Text,
            },
        };

        ResidualCheck Residual(string what) => new()
        {
            Key = EntryKey, Date = date, Bath = bath, LookedFor = what, Result = found, HasPassed = Passed.IsTicked,
            Session = Answers.Optional(Session), Note = Note.Text,
        };
    }

    private int KindAt => Array.FindIndex(Kinds, kind => kind.Equals(Kind.Text.Trim(), StringComparison.OrdinalIgnoreCase));
}
