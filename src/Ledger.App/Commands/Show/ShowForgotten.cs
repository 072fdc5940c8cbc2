using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;

namespace Ledger.App.Commands.Show;

/// <summary>show forgotten: boxes and bottles that nobody has touched for long.</summary>
internal sealed class ShowForgotten : ShowCommand<IReadOnlyList<Untouched>>
{
    private readonly Option<int?> _months = Typed.Option(
        "--months", "N", Text.Whole, "for how many months; otherwise the setting forgotten-months");

    public ShowForgotten(Workbench bench)
        : base(bench, "forgotten", "Shows boxes and bottles that hold something and were not used for months.", """
            Example: trayledger show forgotten --months 6
            """) => Options.Add(_months);

    protected override IReadOnlyList<Untouched> Read(View view, ParseResult parse)
    {
        var months = parse.GetValue(_months) ?? view.Holdings.Settings.Film.ForgottenMonths;
        return months is >= 0 and <= 1200
            ? view.Ledger.UntouchedSince(view.AsOf.PlusMonths(-months), view.AsOf)
            : throw new FormatException("--months: write a number from 0 to 1200");
    }

    protected override void WriteText(IReadOnlyList<Untouched> forgotten, View view, TextWriter output)
    {
        if (forgotten.Count == 0)
            output.WriteLine("Nothing is forgotten.");
        var table = new TextTable(
            Column.Left("container"), Column.Right("holds"), Column.Left("last used"), Column.Left("batch"), Column.Left("kept in"));
        foreach (var (container, touched) in forgotten)
            table.Add(container.Code, container.Held.ToText(view.Style), Dates.Text(touched), container.Lot.Batch, container.Storage);
        table.WriteTo(output, view.Width);
    }

    protected override void WriteJson(IReadOnlyList<Untouched> forgotten, View view, Utf8JsonWriter json)
    {
        json.WriteDate("asOf", view.AsOf);
        json.WriteStartArray("containers");
        foreach (var (container, touched) in forgotten)
        {
            json.WriteStartObject();
            json.WriteString("container", container.Code);
            json.WriteString("item", container.Lot.Item);
            json.WriteQuantity("quantity", container.Held);
            json.WriteDate("lastTouched", touched);
            json.WriteString("storage", container.Storage);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
