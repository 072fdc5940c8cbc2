namespace Ledger.App.Commands.Show;

/// <summary>show prints: what was printed.</summary>
internal sealed class ShowPrints : ShowCommand<IReadOnlyList<PrintRecord>>
{
    private static readonly Shape<IReadOnlyList<PrintRecord>> _shape = new Shape<IReadOnlyList<PrintRecord>>()
        .AsOf()
        .Table("prints", (prints, _) => prints, new Shape<PrintRecord>()
            .Whole("entry", print => print.Number)
            .Text("session", print => print.Session)
            .Date("date", print => print.Date)
            .Word("bath", print => print.Bath)
            .Texts("negatives", print => print.Negatives)
            .Whole("sheets", print => print.Sheets)
            .Area("areaSqIn", print => print.Area)
            .Money("cost", print => print.Cost)
            .Text("note", print => print.Note)
            .Table("lines", (print, _) => print.Lines, new Shape<PrintedPaper>()
                .Text("item", line => line.Item)
                .Whole("sheets", line => line.Sheets)
                .Whole("strips", line => line.Strips)
                .Area("areaSqIn", line => line.Area)
                .Money("cost", line => line.Cost)
                .Text("purpose", line => line.Purpose.Name())
                .Text("note", line => line.Note)),
            (_, rows) => rows);

    public ShowPrints(Workbench bench)
        : base(bench, "prints", "Shows what was printed, the last print session first.", """
            Example: trayledger show prints --last 5
            """, _shape)
    {
        Last = new("print sessions", 50);
        Options.Add(Last);
    }

    protected override IReadOnlyList<PrintRecord> Read(View view, ParseResult parse) =>
        view.Ledger.Prints(view.AsOf, null, AtMost(parse));

    protected override void WriteText(IReadOnlyList<PrintRecord> prints, View view, TextWriter output)
    {
        if (prints.Count == 0)
            output.WriteLine("No print session yet: record one with `trayledger record print-session`.");
        var table = new TextTable(
            Column.Left("session"), Column.Left("date"), Column.Right("area"), Column.Right("paper"),
            Column.Left("bath"), Column.Left("what"), Column.Left("of"));
        foreach (var print in prints)
            table.Add(
                print.Session, Dates.Text(print.Date), print.Area.ToText(view.Style), print.Cost.Text(view.Style),
                print.Bath ?? "-", string.Join(", ", print.Lines.Select(What)), string.Join(", ", print.Negatives));
        table.WriteTo(output, view.Width);
    }

    private static string What(PrintedPaper line) => line.Purpose == PrintPurpose.Strip
        ? $"{line.Strips} {line.Item} {Counted.Noun(line.Strips, "strip")}"
        : $"{line.Sheets} {line.Item} {line.Purpose.Name()}";
}
