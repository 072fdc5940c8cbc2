using Ledger.Faults.Running;
using Ledger.Faults.Verdicts;

namespace Ledger.Faults.Scenarios;

/// <summary>Everything that is tried with kills and faults.</summary>
public static class AllScenarios
{
    private const string OldCalendar = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:old\r\nEND:VCALENDAR\r\n";

    /// <summary>The scenarios, in the order of the table.</summary>
    public static IEnumerable<Scenario> Here()
    {
        yield return new FirstUse();
        yield return new Posting("record a count", 1, null,
            _ => ["record", "count", "fen80", "48", "--reason", "counted again"]);
        yield return new Posting(
            "record a session", 1, null,
            _ => ["record", "session", "S90", "--process", "film", "--sheets", "2 fen80 N", "--anyway"]);
        yield return new Posting(
            "amend the first "
                + "delivery", 1, null,
                    room => ["record", "amendment", $"{Proof.FirstOf(room, "delivery")}", "1.price=99",
                        "--reason", "mistyped"]);
        yield return new Posting(
            "undo a session", 1, null,
            room => ["record", "undo", $"{Proof.LastOf(room, "session")}", "--reason", "typed twice"]);
        yield return new JoiningACopy();
        yield return new Posting("import", 12, "12 entries",
            room => ["import", "deliveries", room.Path("deliveries.csv")]);
        if (Tmux.IsHere)
            yield return new OnTheScreens();
        yield return new BackingUp();
        yield return new Restoring(hasLog: false);
        yield return new Restoring(hasLog: true);
        yield return new Migration("migration of 0.2.0", OlderLedger.OfRelease);
        yield return new Migration("migration of the first tables", path => OlderLedger.OfScripts(path, 5));
        yield return new Writing("export", room => ["export", room.Path("tables")]);
        yield return new ExportingAgain();
        yield return new Writing(
            "print", room => ["print", "wall-card", "--html", room.Path("card.html"), "--replace"],
            ("card.html", "an older card"));
        yield return new Writing("calendar", room => ["calendar", room.Path("days.ics")], ("days.ics", OldCalendar));
    }
}
