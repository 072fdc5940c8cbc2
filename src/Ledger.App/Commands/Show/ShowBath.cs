namespace Ledger.App.Commands.Show;

/// <summary>show bath X: one bath, in use or discarded, with the work it took.</summary>
internal sealed class ShowBath : ShowCommand<(BathReading Reading, IReadOnlyList<BathWorkRecord> Work)>
{
    private static readonly Shape<(BathReading Reading, IReadOnlyList<BathWorkRecord> Work)> _shape =
        new Shape<(BathReading Reading, IReadOnlyList<BathWorkRecord> Work)>()
        .AsOf()
        .With((shown, _) => shown.Reading, BathShape.Of)
        .Flag("inUse", shown => shown.Reading.Bath.Discarded is null)
        .Date("discardedOn", shown => shown.Reading.Bath.Discarded?.On)
        .Word("discardReason", shown => shown.Reading.Bath.Discarded?.Reason)
        .Table("work", (shown, _) => shown.Work, new Shape<BathWorkRecord>()
            .Whole("entry", done => done.Number)
            .Date("date", done => done.Date)
            .Text("summary", done => done.Summary)
            .Flag("isFirst", done => done.IsFirst)
            .Area("areaSqIn", done => done.Area)
            .Area("weightedAreaSqIn", done => done.Weighted),
            (shown, rows) => (shown.Reading, rows))
        .Leading("work");

    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath's name")
        .Offered(Offers.Baths);
    private readonly LastOption _last = new("sessions", 100);

    public ShowBath(Workbench bench)
        : base(bench, "bath", "Shows one bath, in use or discarded, with every session that went through it.", """
            Example: trayledger show bath F4
            """, _shape)
    {
        Arguments.Add(_bath);
        Options.Add(_last);
    }

    protected override (BathReading, IReadOnlyList<BathWorkRecord>) Read(View view, ParseResult parse)
    {
        var code = parse.GetRequiredValue(_bath).Trim();
        var bath = view.Ledger.Bath(code, view.AsOf) ?? throw new RefusedByCommandException(
            $"there was no bath \"{code}\" up to {Dates.Text(view.AsOf)}; "
                + $"{Known.Names(code, view.Holdings.Baths.Select(known => known.Code), "in use")}");
        return (new(bath, bath.Discarded?.On ?? view.AsOf), view.Ledger.WorkOf(bath.Code, view.AsOf, _last.In(parse)));
    }

    protected override void WriteText((BathReading Reading, IReadOnlyList<BathWorkRecord> Work) shown,
        View view, TextWriter output)
    {
        BathText.Write(output, shown.Reading, view);
        BathStoryText.Write(output, shown.Reading, view);
        output.WriteLine();
        if (shown.Work.Count == 0)
            output.WriteLine("No film has gone through it yet.");
        var work = new TextTable(
            Column.Left("date"), Column.Right("area"), Column.Right("weighted"), Column.Left("stood"),
            Column.Right("entry"), Column.Left("what"));
        foreach (var done in shown.Work)
            work.Add(
                Dates.Text(done.Date), done.Area.ToText(view.Style), done.Weighted.ToText(view.Style),
                done.IsFirst ? "first" : "second", Scaled.ToText(done.Number, 0), done.Summary);
        work.WriteTo(output, view.Width);
    }
}
