using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>show bath X: one bath, in use or poured out, with the work it took.</summary>
internal sealed class ShowBath : ShowCommand<(BathReading Reading, IReadOnlyList<BathWorkRecord> Work)>
{
    private readonly Argument<string> _bath = Typed.Argument("bath", Text.NotEmpty, "the bath's name").Offered(Offers.Baths);
    private readonly LastOption _last = new("sessions", 100);

    public ShowBath(Workbench bench)
        : base(bench, "bath", "Shows one bath, in use or discarded, with every session that went through it.", """
            Example: trayledger show bath F4
            """)
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

    protected override void WriteText((BathReading Reading, IReadOnlyList<BathWorkRecord> Work) shown, View view, TextWriter output)
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
                Dates.Text(done.Date), done.Area.ToText(view.Style), done.Weighted.ToText(view.Style), done.IsFirst ? "first" : "second",
                Scaled.ToText(done.Number, 0), done.Summary);
        work.WriteTo(output, view.Width);
    }

    protected override void WriteJson((BathReading Reading, IReadOnlyList<BathWorkRecord> Work) shown, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        BathJson.Write(json, shown.Reading, view);
        json.WriteBoolean("inUse", shown.Reading.Bath.Discarded is null);
        json.WriteDate("discardedOn", shown.Reading.Bath.Discarded?.On);
        json.WriteString("discardReason", shown.Reading.Bath.Discarded?.Reason);
        json.WriteStartArray("work");
        foreach (var done in shown.Work)
        {
            json.WriteStartObject();
            json.WriteNumber("entry", done.Number);
            json.WriteDate("date", done.Date);
            json.WriteString("summary", done.Summary);
            json.WriteBoolean("isFirst", done.IsFirst);
            json.WriteArea("areaSqIn", done.Area);
            json.WriteArea("weightedAreaSqIn", done.Weighted);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
