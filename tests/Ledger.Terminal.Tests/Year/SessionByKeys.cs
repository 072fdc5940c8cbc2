using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;
using Terminal.Gui.Input;
using static Ledger.Terminal.Tests.Year.YearByKeys;

namespace Ledger.Terminal.Tests.Year;

/// <summary>The keys that record a session, of film or of prints.</summary>
internal static class SessionByKeys
{
    public static void Type(SessionLog session, Typist typist)
    {
        typist.On("1s");
        for (var i = 0; i < session.Lines.Count; i++)
        {
            if (i > 0)
                typist.Press(Key.F4);
            if (IsKnown(session.Lines[i]))
                typist.Press(Key.F7);
        }

        typist.Fill(
        [
            ("Session", session.Session), ("Process", session.Process), ("Bath", session.Bath ?? ""), ("Note", session.Note),
            .. session.Lines.SelectMany(Line), .. session.Anyway ? [("Anyway", "yes")] : Array.Empty<(string, string)>(),
        ]);
    }

    private static IEnumerable<(string Label, string Text)> Line(SessionLine line)
    {
        if (IsKnown(line))
        {
            yield return ("from", line.From ?? "");
            yield return ("spoiled by", line.Cause?.Name() ?? "");
            yield return ("box", line.Container ?? "");
            yield return ("note", line.Note);
        }

        yield return ("Film", line.Item);
        yield return ("sheets", $"{line.Sheets}");
        yield return ("group", line.Group);
        yield return ("dev. ml", Text(line.Developer?.Millilitres));
        yield return ("became", line.Fate.Name());
    }

    private static bool IsKnown(SessionLine line) =>
        line.From is not null || line.Cause is not null || line.Container is not null || line.Note.Length > 0;

    public static void Type(PrintSession session, Typist typist)
    {
        var strips = session.Lines.SingleOrDefault(line => line.Purpose == PrintPurpose.Strip);
        typist.Find("print").On("n").Fill(
            ("Session", session.Session), ("Paper", session.Lines[0].Item), ("Final prints", Sheets(session, PrintPurpose.Final)),
            ("Work prints", Sheets(session, PrintPurpose.Work)), ("Sheets cut up", Sheets(session, PrintPurpose.Strip)),
            ("Strips", strips is null ? "" : $"{strips.Strips}"), ("of", $"{strips?.StripsPerSheet ?? 4}"), ("Fixer", session.Bath ?? ""),
            ("Note", session.Note));
    }

    private static string Sheets(PrintSession session, PrintPurpose purpose) =>
        session.Lines.Where(line => line.Purpose == purpose).Sum(line => line.Sheets) is > 0 and var sheets ? $"{sheets}" : "";
}
