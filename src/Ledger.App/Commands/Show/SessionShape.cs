namespace Ledger.App.Commands.Show;

/// <summary>A session in documents, the same among all sessions and alone.</summary>
internal static class SessionShape
{
    /// <summary>Sheets that were developed alike.</summary>
    public static Shape<SessionSheets> Line { get; } = new Shape<SessionSheets>()
        .Text("item", line => line.Item)
        .Whole("sheets", line => line.Sheets)
        .Area("areaSqIn", line => line.Area)
        .Money("cost", line => line.Cost)
        .Text("group", line => line.Group)
        .Text("fate", line => line.Fate.Name())
        .Text("note", line => line.Note);

    /// <summary>What is said of the session itself.</summary>
    public static Shape<SessionRecord> Own { get; } = Said("sheetCount");

    /// <summary>A session among others.</summary>
    public static Shape<SessionRecord> Of { get; } = Said("sheets").Table("lines", (session, _) => session.Lines, Line);

    private static Shape<SessionRecord> Said(string count) => new Shape<SessionRecord>()
        .Whole("entry", session => session.Number)
        .Text("session", session => session.Session)
        .Date("date", session => session.Date)
        .Text("process", session => session.Process)
        .Whole("processVersion", session => session.ProcessVersion)
        .Word("bath", session => session.Bath)
        .Volume("developer", session => session.Developer)
        .Whole(count, session => session.Sheets)
        .Area("areaSqIn", session => session.Area)
        .Text("note", session => session.Note);
}
