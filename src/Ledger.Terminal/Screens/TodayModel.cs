using Ledger.Terminal.Blocks;
using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Screens;

/// <summary>What needs the user, most pressing first, and what could be developed today.</summary>
/// <param name="ledger">The ledger.</param>
internal sealed class TodayModel(ILedger ledger) : TableModel(ledger)
{
    /// <summary>What an empty ledger says.</summary>
    public const string NoItems =
        "No ledger entries yet. On the Shelf (2) press N to write down an item, or bring them in from CSV files (9). "
        + "`trayledger demo` shows an invented year.";

    private Holdings _holdings = new(ledger.Today);
    private IReadOnlyList<NoticeGroup> _notices = [];
    private IReadOnlyList<(Notice Notice, Snooze Snooze)> _snoozed = [];
    private IReadOnlyList<ReorderReading> _readings = [];
    private IReadOnlyList<Prospect> _prospects = [];

    public override string Name => "Today";

    /// <summary>How much needs the user, and how soon.</summary>
    public override string Headline => string.Join(", ", new[]
    {
        (Severity.Now, "now"), (Severity.Soon, "soon"), (Severity.Note, "to note"),
    }.Select(one => (Count: _notices.Where(group => group.First.Severity == one.Item1)
        .Sum(group => group.Notices.Count), Name: one.Item2))
        .Append((Count: _snoozed.Count, Name: "snoozed")).Where(one => one.Count > 0)
        .Select(one => $"{one.Count} {one.Name}"));

    public override IReadOnlyList<string> Purpose =>
    [
        "What needs you, most pressing first: exhausted and expiring baths, expired bottles and boxes, stock below "
            + "your minimum.",
        "Each says why, and the one step that settles it. Enter opens the form for that step, filled in; V shows what "
            + "it is about.",
        "Beside it: what could be developed today, process by process.",
    ];

    public override WorkedExample Example { get; } = new(
        "\n", "Enter on \"bath F4 expired 2 days ago\" opens the form that discards it, with its jug filled in.",
        "Discard");

    public override string Empty => _holdings.LastItem > 0 ? "Nothing needs you today." : NoItems;

    public override IReadOnlyList<TableColumn> Columns { get; } =
    [
        new("When", 7), new("What", 60, Least: 30), new("By", 10),
    ];

    protected override string RowName => "notice";

    public override int Count => _notices.Count;

    public override IReadOnlyList<ScreenAction> Actions =>
    [
        ScreenAction.Of(KeyTable.View, "shows the bath, bottle, jug, holder or item that it is about", Show),
        ScreenAction.OnRow(KeyTable.Snooze,
            "lets the notice be quiet until a day, with the reason; undoing the entry ends it", row => new KindForm(
            Ledger, "snooze", ("notice", _notices[row].First.Kind.Name()),
            ("about", string.Join(", ", _notices[row].About)))),
    ];

    public override void Refresh()
    {
        _holdings = Ledger.HoldingsOn(Today);
        _readings = ReorderReading.InUse(Ledger, _holdings);
        _notices = NoticeGroup.Of(TodayReading.Of(_holdings, _readings));
        _snoozed = TodayReading.Snoozed(_holdings, _readings);
        _prospects = [.. Prospect.Of(_holdings)];
    }

    public override string IdOf(int row) => $"{_notices[row].First.Kind.Name()} {_notices[row].First.About}";

    public override string? Traced(int row) => _notices[row].First.About;

    public override string Cell(int row, int column) => column switch
    {
        0 => _notices[row].First.Severity switch { Severity.Now => "!! now", Severity.Soon => "! soon", _ => "  note" },
        1 => _notices[row].Text,
        _ => _notices[row].By is { } by ? Dates.Text(by) : "",
    };

    public override IReadOnlyList<Block> Details(int row) =>
        [.. row < 0 ? [] : new[] { About(_notices[row]) }, Possible, Coming,
            .. _snoozed.Count == 0 ? [] : new[] { Snoozed }];

    public override string? OpenLabel => "Settle it";

    public override Step? Open(int row) => new Settling(Ledger, _holdings, _readings).Of(_notices[row]);

    /// <summary>Where what it is about is shown.</summary>
    private Step? Show(int row)
    {
        if (row < 0)
            return null;
        var about = _notices[row].First.About;
        if (_holdings.Bath(about) is not null)
            return new ScreenStep("Baths", about);
        if (_holdings.Container(about) is { } container)
            return new TableStep(new ContainersModel(Ledger, container.Lot.Item) { SelectedId = about });
        if (_holdings.Jug(about) is not null)
            return new TableStep(new JugsModel(Ledger) { SelectedId = about });
        if (_holdings.Film.Side(about) is { } side)
            return new ScreenStep("Holders", side.Holder);
        return _holdings.Film.ExposedBox(about) is not null
            ? new ScreenStep("Holders", about)
            : new ScreenStep("Shelf", about);
    }

    private Block About(NoticeGroup group) => Block.Facts(ScreenText.Sentence(group.Text), [
        .. group.Reasons.Select((reason, i) => (i == 0 ? "Reason" : " ", (string?)reason)),
        ("Do", RefusalText.Words(group.First.Step)),
        .. Picture(group.First.About),
    ]);

    private IEnumerable<(string Label, string? Text)> Picture(string about)
    {
        var style = _holdings.Settings.Style;
        if (_holdings.Bath(about) is { } bath)
            return BathBlocks.Gauges(new BathReading(bath, Today), style, Today);
        if (_holdings.Container(about) is { } container)
            return [("Left",
                $"{ShelfBlocks.Left(container)}, {container.Held.ToText(style)} of {container.Size.ToText(style)}")];
        if (_holdings.Jug(about) is { } jug)
            return [
                ("Filled",
                    $"{Gauge.OfPart(jug.Held.Microlitres, jug.Size.Microlitres)}, {jug.Held.ToText(style)} of "
                        + $"{jug.Size.ToText(style)}")];
        if (_holdings.Item(about) is { MinimumOnHand: { } minimum } item)
        {
            var usable = new ShelfReading(item, _holdings.ContainersOf(item.Code), Today).Usable;
            return [("Of minimum",
                $"{Gauge.OfPart(usable.Base, minimum.Base)}, {usable.ToText(style)} of {minimum.ToText(style)}")];
        }

        return [];
    }

    private Block Possible => _prospects.Count == 0
        ? Block.Of("What could be done today",
            "There is no process yet; F2 finds Processes, where N writes one down, or it comes from a CSV file (9).")
        : new("What could be done today",
            width => _prospects.SelectMany(prospect => Lines(prospect, width)).Concat(Films(width)));

    /// <summary>What is due in the coming weeks.</summary>
    private Block Coming => new("The coming 8 weeks", width =>
    [
        .. CalendarStrip.Of(
            Reminders.Of(_holdings, _readings).Select(reminder => (reminder.Date, Letter(reminder.Kind))),
            Today, width),
        .. Paragraph.Of(CalendarStrip.Legend, width),
    ]);

    /// <summary>What is quiet is not forgotten.</summary>
    private Block Snoozed => Block.Of("Snoozed", [
        .. _snoozed.Select(one => $"  until {Dates.Text(one.Snooze.Until)}: {one.Notice.Text} ({one.Snooze.Reason})"),
        "Taking a snooze back in the journal (6) ends it.",
    ]);

    private static char Letter(ReminderKind kind) => kind switch
    {
        ReminderKind.GoodUntil or ReminderKind.BathGoodUntil => 'x',
        ReminderKind.Delivery => 'd',
        ReminderKind.Session or ReminderKind.Trip => 'p',
        _ => 'o',
    };

    private IEnumerable<string> Lines(Prospect prospect, int width)
    {
        var style = _holdings.Settings.Style;
        yield return prospect.Process;
        if (prospect.Developer is { } developer)
        {
            var trays = prospect.Batches is { } batches ? $", enough for {Counted.Of(batches, "batch")}" : "";
            foreach (var line in Paragraph.Of($"  {developer}: {prospect.DeveloperLeft?.ToText(style)}{trays}",
                width, 4))
                yield return line;
        }

        foreach (var line in Paragraph.Of("  " + Room(prospect, style), width, 4))
            yield return line;
    }

    private string Room(Prospect prospect, MeasureStyle style)
    {
        if (prospect.Bath is not { } code)
            return _holdings.Process(prospect.Process)?.Reused.Any() == true
                ? "no bath is in use: mix one (B)"
                : "needs no bath";
        if (prospect.RoomInBath is not { } room)
            return $"bath {code}: no capacity is set";
        return room == Area.Zero
            ? $"bath {code}: no longer usable"
            : $"bath {code}: {room.ToText(style)} of capacity left";
    }

    private IEnumerable<string> Films(int width)
    {
        var films = _holdings.ItemsInUse.Where(item => item is { Kind: ItemKind.Film, IsPaper: false })
            .Select(item => new ShelfReading(item, _holdings.ContainersOf(item.Code), Today))
            .Where(reading => !reading.Usable.IsZero)
            .Select(reading => $"{reading.Usable.ToText(_holdings.Settings.Style)} of {reading.Item.Code}")
            .ToList();
        var sentence = films.Count == 0
            ? "No usable film is on the shelf."
            : $"Usable film: {string.Join(", ", films)}.";
        return Paragraph.Of(sentence, width, 2);
    }
}
