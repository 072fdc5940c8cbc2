using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Notices;
using Ledger.Core.Reordering;

namespace Ledger.App.Commands.Show;

/// <summary>What Today shows.</summary>
/// <param name="Notices">What needs the user.</param>
/// <param name="Snoozed">What is quiet, until when and why.</param>
internal sealed record TodayShown(IReadOnlyList<Notice> Notices, IReadOnlyList<(Notice Notice, Snooze Snooze)> Snoozed);

/// <summary>show today: what needs the user, and what could be developed.</summary>
internal sealed class ShowToday : ShowCommand<TodayShown>
{
    private readonly Option<bool> _exitCode = new("--exit-code")
    {
        Description = "end with status 10 when something must be done now or soon",
    };

    public ShowToday(Workbench bench)
        : base(bench, "today", "Shows what needs you, most pressing first, and what you could develop today.", """
            Example: trayledger show today
            """) => Options.Add(_exitCode);

    protected override TodayShown Read(View view, ParseResult parse)
    {
        var reorder = ReorderReading.Of(view.Ledger, view.Holdings);
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
            output.WriteLine(view.Ledger.Journal(view.AsOf, null, 1).Count == 0 ? "No entries yet." : "Nothing needs you.");
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

    protected override void WriteJson(TodayShown today, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("notices");
        foreach (var notice in today.Notices)
        {
            json.WriteStartObject();
            json.WriteString("kind", notice.Kind.Name());
            json.WriteString("severity", notice.Severity.Name());
            json.WriteString("about", notice.About);
            json.WriteString("text", notice.Text);
            json.WriteString("reason", notice.Reason);
            json.WriteString("step", notice.Step);
            json.WriteDate("by", notice.By);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("snoozed");
        foreach (var (notice, snooze) in today.Snoozed)
        {
            json.WriteStartObject();
            json.WriteString("kind", notice.Kind.Name());
            json.WriteString("severity", notice.Severity.Name());
            json.WriteString("about", notice.About);
            json.WriteString("text", notice.Text);
            json.WriteDate("until", snooze.Until);
            json.WriteString("reason", snooze.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("prospects");
        foreach (var prospect in Prospect.Of(view.Holdings))
        {
            json.WriteStartObject();
            json.WriteString("process", prospect.Process);
            json.WriteString("developer", prospect.Developer);
            json.WriteQuantity("developerLeft", prospect.DeveloperLeft);
            json.WriteFigure("batches", prospect.Batches);
            json.WriteString("bath", prospect.Bath);
            json.WriteArea("capacityLeftSqIn", prospect.RoomInBath);
            json.WriteEndObject();
        }

        json.WriteEndArray();
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
