using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>The working solutions in use: what each has taken, what it can still take, and what ends it.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class BathsModel(ILedger ledger) : TableModel(ledger)
{
    private const int HistoryShown = 200;
    private Holdings? _read;
    private IReadOnlyList<BathReading> _baths = [];

    public override string Name => "Baths";

    /// <summary>Which baths can no longer be used.</summary>
    public override string Headline =>
        string.Join(", ", _baths.Where(reading => reading.EndedBy is not null)
            .Select(reading => $"{reading.Bath.Code} {BathBlocks.State(reading, Shown)}"));

    public override IReadOnlyList<string> Purpose =>
    [
        "The working solutions in use: fixer, stop bath, wash aid. A bath is exhausted by the area that went through "
            + "it, or it expires by age.",
        "The area is counted against a capacity that you set; its basis is shown beside it. "
        + "A film with a fixer factor counts for more. A stop bath can be used until its indicator changes colour.",
        .. HasPair
            ?
            [
                "Of a pair only the first bath is counted. When it is exhausted, Rotate pair (F2 finds it) discards "
                    + "it, moves the second up and mixes a new second, in one step.",
            ]
            : Array.Empty<string>(),
        "A clearing test, a silver strip, what you see, or the container it is kept in can end it sooner; the details "
            + "say which comes first.",
    ];

    public override WorkedExample Example { get; } = new(
        "d", "D on F4 opens the form that discards it: expired, into jug J2. Below the line stands what changes.",
        "in use -> discarded");

    public override string Empty => "No bath is in use. Press B to mix one.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("Bath", 12), new("State", 17), new("Capacity left", 18), new("Used, of capacity", 26, IsFigure: true),
        new("Good until", 10), new("Sheets left", 14, IsFigure: true), new("Area left", 14, IsFigure: true),
        new("Age", 9, IsFigure: true), new("From", 16, Least: 5),
    ];

    public override int Count => _baths.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.Discard, "discards the selected bath: into a jug, or handed over",
            row => new DiscardForm(Ledger, IdOf(row))),
        ScreenAction.Of(
            KeyTable.Bath, "mixes the bath that follows the selected one",
            row => new FormStep(new BathForm(Ledger, row < 0 ? null : IdOf(row)))),
        .. HasPair
            ? [ScreenAction.Rare(
                "Rotate pair", "rotates a pair: the first bath out, the second up, a new one mixed",
                row => new FormStep(new KindForm(Ledger, "rotation",
                    ("bath", row < 0 ? null : FirstOfPair(IdOf(row))))))]
            : Array.Empty<ScreenAction>(),
        ScreenAction.OnRow(
            KeyTable.Test, "records how long a strip of film took to clear", row => ClearingTest(IdOf(row))),
        .. Notes.Select(note => ScreenAction.RareOnRow(note.Label, note.Meaning,
            row => new KindForm(Ledger, note.Kind, ("bath", IdOf(row))))),
        .. Suspicions.Of(Ledger, IdOf),
        ScreenAction.OnRow(KeyTable.Add, "adds fresh solution or replenisher",
            row => new KindForm(Ledger, "top-up", ("bath", IdOf(row)))),
        Entries.PutRight("amends what was recorded when the selected bath was mixed"),
        Entries.TakeBack("takes back the mixing of the selected bath, where nothing went through it"),
        Entries.Entries,
        ScreenAction.Of(KeyTable.Paper, "writes its label, its tally slip or the wall card",
            row => new TableStep(new PaperModel(Ledger, Papers(row)))),
    ];

    public override void Refresh()
    {
        _read = Ledger.HoldingsOn(Today);
        _baths = [.. Shown.Baths.Select(bath => new BathReading(bath, Today))];
    }

    public override string IdOf(int row) => _baths[row].Bath.Code;

    public override string? Traced(int row) => IdOf(row);

    public override string Cell(int row, int column)
    {
        var reading = _baths[row];
        return column switch
        {
            0 => reading.Bath.Code,
            1 => BathBlocks.Mark(reading, Shown) + BathBlocks.State(reading, Shown),
            2 => reading.UsedPercent is { } used ? Gauge.Of(100 - used) : "not limited",
            3 => BathBlocks.Throughput(reading, Shown.Settings.Style),
            4 => reading.GoodUntil is { } good ? Dates.Text(good.Date) : "",
            5 => RoomForFilm.Heaviest(RoomForFilm.Of(reading, Shown)).FirstOrDefault() is { } room
                ? $"{room.Sheets} of {room.Format}"
                : "",
            6 => reading.Remaining?.ToText(Shown.Settings.Style) ?? "",
            7 => Counted.Of(reading.AgeDays, "day"),
            _ => reading.Bath.Item,
        };
    }

    public override IReadOnlyList<Block> Details(int row) => row < 0 ? [] :
    [
        BathBlocks.Facts(_baths[row], Shown),
        .. BathEndBlocks.Of(_baths[row], Shown),
        BathBlocks.History(Ledger.WorkOf(IdOf(row), Today, HistoryShown), Shown),
    ];

    /// <summary>The list of actions asks before the screen was ever seen.</summary>
    private EntryKeys Entries => new(Ledger, row => new(SubjectKind.Place, IdOf(row)));

    private Holdings Shown => _read ??= Ledger.HoldingsOn(Today);

    /// <summary>Who fixes in one bath sees nothing of rotating.</summary>
    private bool HasPair => Shown.Baths.Any(Shown.IsSecond);

    private IEnumerable<(string, string, Step)> Papers(int row) =>
    [
        .. row < 0 ? [] : new (string, string, Step)[]
        {
            ($"Label of {IdOf(row)}", "for the bottle: dilution, mixed, discard by, cautions",
                new LabelStep(IdOf(row), (paper, place) => paper.BottleLabel(IdOf(row), place))),
            ($"Tally slip of {IdOf(row)}", "beside the bath: a box to cross out for each sheet",
                new PaperStep(paper => paper.TallySlip(IdOf(row)))),
        },
        ("Wall card", "areas, equivalents and the capacities of the baths in use",
            new PaperStep(paper => paper.WallCard())),
    ];

    /// <summary>What is seen or measured at a bath, beside its clearing tests.</summary>
    private static readonly (string Kind, string Label, string Meaning)[] Notes =
    [
        ("observation", "Note what is seen", "records what was seen or smelled at the selected bath"),
        ("indicator", "Note the indicator", "records the colour of its indicator"),
        ("silver-test", "Note a silver strip", "records how much silver a strip showed"),
        ("residual-test", "Note a residual test", "records what was left in film or paper: silver, or hypo"),
        ("control-strip", "Note a control strip",
            "records what a control strip showed of a developer that is replenished"),
        ("bath-storage", "Keep in another container", "records what the selected bath is kept in from now on"),
    ];

    /// <summary>A test of a fixer for film: of the film tested there last, else of the film developed last.</summary>
    private KindForm ClearingTest(string bath)
    {
        var known = _read!.Bath(bath);
        return new(
            Ledger, "clearing-test",
            ("bath", known is { Role: ItemRole.Fixer, Material: BathMaterial.Film } ? bath : null),
            ("film", known is { ClearingTests.Count: > 0 }
                ? null
                : Ledger.Sessions(Today, null, 1) is [{ Lines: [var line, ..] }] ? line.Item : null));
    }

    /// <summary>The first bath of the pair that the bath belongs to; null when it stands alone.</summary>
    private string? FirstOfPair(string code) => _read!.Bath(code) is not { } bath ? null
        : _read.IsSecond(bath) ? bath.PairedWith : _read.SecondAfter(bath) is null ? null : code;
}
