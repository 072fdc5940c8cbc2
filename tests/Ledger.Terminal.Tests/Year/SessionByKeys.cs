using static Ledger.Terminal.Tests.Year.YearByKeys;

namespace Ledger.Terminal.Tests.Year;

/// <summary>The keys that record a session, of film or of prints.</summary>
internal static class SessionByKeys
{
    public static void Type(SessionLog session, Typist typist)
    {
        typist.On("1s");
        var isOffered = typist.Has("From"); // sheets that wait are offered
        for (var i = 0; i < session.Lines.Count; i++)
        {
            if (i > 0)
                typist.Press(Key.F4);
            if (IsKnown(session.Lines[i]) && !(isOffered && i == 0))
                typist.Press(Key.F7);
        }

        typist.Fill(
        [
            ("Session", session.Session), ("Process", session.Process), ("Bath", session.Bath ?? ""),
            ("Note", session.Note),
            .. session.Lines.SelectMany((line, i) => Line(line, IsKnown(line) || (isOffered && i == 0))),
        ]);
    }

    private static IEnumerable<(string Label, string Text)> Line(SessionLine line, bool isKnown)
    {
        if (isKnown)
        {
            yield return ("From", line.From ?? "");
            yield return ("spoiled by", line.Cause?.Name() ?? "");
            yield return ("box", line.Container ?? "");
            yield return ("Note", line.Note);
        }

        yield return ("Film", line.Item);
        yield return ("Sheets", $"{line.Sheets}");
        yield return ("Group", line.Group);
        yield return ("dev. ml", Text(line.Developer?.Millilitres));
        yield return ("became", line.Fate.Name());
    }

    private static bool IsKnown(SessionLine line) =>
        line.From is not null || line.Cause is not null || line.Container is not null || line.Note.Length > 0;

    public static void Type(PrintSession session, Typist typist)
    {
        typist.Find("print").On("n").Press([.. Enumerable.Repeat(Key.F4, session.Lines.Count - 1)]).Fill(
        [
            ("Session", session.Session), ("Fixer", session.Bath ?? ""),
            .. session.Lines.SelectMany(line => new[]
            {
                ("Sheets", line.Sheets == 0 ? "" : $"{line.Sheets}"), ("Paper", line.Item),
                ("Purpose", line.Purpose.Name()), ("Strips", line.Strips == 0 ? "" : $"{line.Strips}"),
                ("of", line.StripsPerSheet == 4 ? "" : $"{line.StripsPerSheet}"),
            }),
            .. session.Note.Length == 0 ? Array.Empty<(string, string)>()
                : [.. session.Lines.Select(line => ("Note", line.Note)), ("Note", session.Note)],
        ]);
    }
}
