using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Tables;
using NodaTime.Text;

namespace Ledger.Terminal.Screens;

/// <summary>Everything that was recorded, or what was recorded about one thing, the last first.</summary>
internal sealed class JournalModel : TableModel
{
    private static readonly InstantPattern Moment = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm 'UTC'");
    private readonly PagedRows<JournalEntry> _entries;
    private readonly Subject? _about;

    /// <param name="ledger">The ledger.</param>
    /// <param name="about">What the entries are about; null for all that there are.</param>
    public JournalModel(ILedger ledger, Subject? about = null)
        : base(ledger)
    {
        _about = about;
        _entries = new((before, atMost) => about is null ? Ledger.Journal(Today, before?.Number, atMost)
            : Ledger.EntriesAbout(about, before?.Number, atMost));
    }

    public override string Name => _about switch
    {
        null => "Journal",
        { Kind: SubjectKind.Entry } => $"Entry {_about.Name}",
        _ => $"Entries about {_about.Name}",
    };

    public override IReadOnlyList<string> Purpose =>
    [
        "Everything that was ever recorded, the last first. What was said stays, and what follows from it is worked "
            + "out from it.",
        "What was wrong is amended (E) or taken back (U), and an undo can be taken back too; all of it stays here.",
    ];

    public override WorkedExample Example { get; } = new(
        "u", "U on the last entry opens the form that takes it back. It stays in the journal, marked as taken back.",
        "Undo entry");

    public override string Empty => _about is null ? TodayModel.NoItems : $"No entry about {_about.Name} was kept.";

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("No.", 8, IsFigure: true), new("Date", 10), new("Kind", 16, Least: 7), new("What", 70, Least: 25),
        new("Taken back", 10),
    ];

    public override int Count => _entries.Rows.Count;

    /// <summary>The selected entry, or null.</summary>
    public JournalEntry? Selected => SelectedRow >= 0 ? _entries.Rows[SelectedRow] : null;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.OnRow(KeyTable.Amend, "amends the selected entry",
            row => EntryKeys.Amending(Ledger, _entries.Rows[row])),
        ScreenAction.Rare("Earlier in its day",
            "puts the selected entry before the one that now comes before it on the same day", Earlier),
        ScreenAction.OnRow(KeyTable.Undo, "takes the selected entry back",
            row => new UndoForm(Ledger, _entries.Rows[row])),
    ];

    public override void Refresh() => _entries.Refresh();

    public override void Reach(int row) => _entries.Reach(row);

    public override string IdOf(int row) => IdOf(_entries.Rows[row].Number);

    public override string IdOf(Saving saving) => IdOf(saving.Number);

    protected override string RowName => "entry";

    public override string? Traced(int row) => Ledger.Said(_entries.Rows[row].Number) switch
    {
        SessionLog said => said.Session,
        PrintSession said => said.Session,
        PlannedSession said => said.Plan,
        BathMixing said => said.Bath,
        Rotation said => said.NewBath,
        ClearingTest said => said.Bath,
        ResidualCheck said => said.Bath,
        TopUp said => said.Bath,
        KeeperNaming said => said.Negative,
        FateChange said => said.Sheets[0],
        SheetNote said => said.Sheets[0],
        Filing said => said.Sheets[0],
        SuspicionRaising said => said.What,
        SuspicionClearing said => said.What,
        Load said => said.Sides[0],
        ExposureNote said => said.Sides[0],
        Delivery said => said.Lines.Select(line => line.Batch).FirstOrDefault(number => number.Length > 0),
        _ => null,
    };

    public override string Cell(int row, int column)
    {
        var entry = _entries.Rows[row];
        return column switch
        {
            0 => IdOf(entry.Number),
            1 => Dates.Text(entry.Date),
            2 => entry.Kind,
            3 => entry.Summary,
            _ => entry.UndoneBy is { } by ? $"by {by}" : entry.AmendedBy is { } amended ? $"amended by {amended}" : "",
        };
    }

    public override IReadOnlyList<Block> Details(int row)
    {
        if (row < 0)
            return [];
        var entry = _entries.Rows[row];
        return
        [
            Block.Facts($"Entry {entry.Number}: {entry.Kind}", [
                ("What", entry.Summary),
                ("Note", entry.Note),
                ("Happened", Dates.Text(entry.Date)),
                ("In its day", Place(entry)),
                ("Recorded", Moment.Format(entry.RecordedAt)),
                ("Undoes", entry.Undoes is { } reverses ? $"entry {reverses}" : null),
                ("Amends", entry.Amends is { } amends ? $"entry {amends}" : null),
                ("Amended", entry.AmendedBy is { } amended ? $"by entry {amended}" : null),
                ("Taken back", entry.UndoneBy is { } by ? $"by entry {by}" : null),
            ]),
        ];
    }

    /// <summary>The form that moves an entry up in its day.</summary>
    private Step? Earlier(int row)
    {
        if (row < 0)
            return null;
        var entry = _entries.Rows[row];
        var day = Ledger.JournalOf(entry.Date);
        var at = day.ToList().FindIndex(one => one.Number == entry.Number);
        return at > 0 && Ledger.Said(entry.Number) is { } said
            ? new FormStep(new AmendForm(Ledger, entry, said, before: day[at - 1]))
            : new MessageStep(at == 0 ? $"Entry {entry.Number} is the first of its day already."
                : $"Entry {entry.Number} cannot be moved in its day.");
    }

    /// <summary>Where an entry stands among those of its day.</summary>
    private string? Place(JournalEntry entry)
    {
        var day = Ledger.JournalOf(entry.Date);
        var at = day.ToList().FindIndex(one => one.Number == entry.Number);
        return at < 0 || day.Count == 1 ? null
            : $"{at + 1} of {day.Count}" + (at == 0 ? "" : $", after entry {day[at - 1].Number}")
                + (at == day.Count - 1 ? "" : $", before entry {day[at + 1].Number}");
    }

    /// <summary>What names the row of an entry.</summary>
    public static string IdOf(long number) => number.ToString(CultureInfo.InvariantCulture);
}
