namespace Ledger.App.Commands.Show;

/// <summary>What Today shows.</summary>
/// <param name="Notices">What needs the user.</param>
/// <param name="Snoozed">What is quiet, until when and why.</param>
internal sealed record TodayShown(IReadOnlyList<Notice> Notices, IReadOnlyList<(Notice Notice, Snooze Snooze)> Snoozed);

/// <summary>show today: what needs the user, and what could be developed.</summary>
internal sealed class ShowToday : ShowCommand<TodayShown>
{
    private static readonly Shape<TodayShown> _shape = new Shape<TodayShown>()
        .AsOf()
        .Table("notices", (today, _) => today.Notices, new Shape<Notice>()
            .Text("kind", notice => notice.Kind.Name())
            .Text("severity", notice => notice.Severity.Name(), "now, soon or note")
            .Text("about", notice => notice.About)
            .Text("text", notice => notice.Text)
            .Text("reason", notice => notice.Reason)
            .Text("step", notice => notice.Step, "what settles it")
            .Date("by", notice => notice.By),
            (today, notices) => today with { Notices = notices })
        .Table("snoozed", (today, _) => today.Snoozed, new Shape<(Notice Notice, Snooze Snooze)>()
            .Text("kind", row => row.Notice.Kind.Name())
            .Text("severity", row => row.Notice.Severity.Name())
            .Text("about", row => row.Notice.About)
            .Text("text", row => row.Notice.Text)
            .Date("until", row => row.Snooze.Until)
            .Text("reason", row => row.Snooze.Reason))
        .Table("prospects", (_, view) => Prospect.Of(view.Holdings), new Shape<Prospect>()
            .Text("process", prospect => prospect.Process)
            .Word("developer", prospect => prospect.Developer)
            .Quantity("developerLeft", prospect => prospect.DeveloperLeft)
            .Whole("batches", prospect => prospect.Batches)
            .Word("bath", prospect => prospect.Bath)
            .Area("capacityLeftSqIn", prospect => prospect.RoomInBath));

    private readonly Option<bool> _exitCode = new("--exit-code")
    {
        Description = "end with status 10 when something must be done now or soon",
    };

    public ShowToday(Workbench bench)
        : base(bench, "today", "Shows what needs you, most pressing first, and what you could develop today.", """
            Example: trayledger show today
            """, _shape) => Options.Add(_exitCode);

    protected override TodayShown Read(View view, ParseResult parse)
    {
        var reorder = ReorderReading.InUse(view.Ledger, view.Holdings);
        return new(TodayReading.Of(view.Holdings, reorder), TodayReading.Snoozed(view.Holdings, reorder));
    }

    protected override int Status(TodayShown today, ParseResult parse) =>
        parse.GetValue(_exitCode) && today.Notices.Any(notice => notice.Severity is Severity.Now or Severity.Soon)
            ? ExitStatus.NeedsTheUser
            : ExitStatus.Done;

    protected override void WriteText(TodayShown today, View view, TextWriter output)
    {
        var notices = today.Notices;
        output.WriteLine(Dates.Text(view.AsOf));
        if (notices.Count == 0)
            output.WriteLine(view.Ledger.Journal(view.AsOf, null, 1).Count == 0
                ? "No entries yet."
                : "Nothing needs you.");
        foreach (var notice in notices)
            Write(notice, view, output);
        foreach (var (notice, snooze) in today.Snoozed)
        {
            output.WriteLine();
            output.WriteProse($"quiet until {Dates.Text(snooze.Until)}  {notice.Text}", view.Width);
            output.WriteProse(snooze.Reason, view.Width, "      ");
        }

        var prospects = new TextTable(
            Column.Left("process"), Column.Left("developer"), Column.Right("usable"), Column.Right("trays"),
            Column.Left("bath"), Column.Right("capacity left"));
        foreach (var prospect in Prospect.Of(view.Holdings))
            prospects.Add(
                prospect.Process, prospect.Developer ?? "-", prospect.DeveloperLeft?.ToText(view.Style) ?? "-",
                prospect.Batches?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-",
                prospect.Bath ?? "-", Room(prospect, view));
        if (prospects.IsEmpty)
            return;
        output.WriteLine();
        output.WriteLine("What could be developed");
        prospects.WriteTo(output, view.Width);
    }

    private static void Write(Notice notice, View view, TextWriter output)
    {
        output.WriteLine();
        output.WriteProse($"{notice.Severity.Name(),-4}  {notice.Text}", view.Width);
        output.WriteProse(notice.Reason, view.Width, "      ");
        output.WriteProse($"-> {notice.Step}", view.Width, "      ");
    }

    private static string Room(Prospect prospect, View view) =>
        prospect.Bath is null ? "-" : prospect.RoomInBath?.ToText(view.Style) ?? "no limit set";
}
