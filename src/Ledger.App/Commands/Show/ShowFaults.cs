using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Faults;
using Ledger.Core.Measures;
using Ledger.Core.Tracing;
using NodaTime;

namespace Ledger.App.Commands.Show;

/// <summary>show faults: rejects over time, and whether a side is worse than the others beyond chance.</summary>
internal sealed class ShowFaults : ShowCommand<FaultsOverTime>
{
    private readonly Option<LocalDate?> _from = Typed.Option("--from", "DATE", Text.Date,
        "the first day; otherwise the first of all");
    private readonly Option<LocalDate?> _to = Typed.Option("--to", "DATE", Text.Date,
        "the last day; otherwise today, or the day of --as-of");

    public ShowFaults(Workbench bench)
        : base(bench, "faults", "Shows rejects by cause, holder side, film, process and month, and what is worse than the others.", """
            Each with the share of the sheets that were to become negatives. Whether a side, an
            emulsion or a process is worse than the others is told by Fisher's exact test: how
            often chance alone would do it. Few sheets say little, and are marked.
            Example: trayledger show faults
            """)
    {
        Options.Add(_from);
        Options.Add(_to);
    }

    protected override FaultsOverTime Read(View view, ParseResult parse)
    {
        var (from, to) = (parse.GetValue(_from) ?? new(1900, 1, 1), parse.GetValue(_to) ?? view.AsOf);
        if (from > to)
            throw new FormatException($"the period ends on {Dates.Text(to)}, before it begins on {Dates.Text(from)}");
        return new(view.Ledger.Cards(new SheetSearch(), view.AsOf), from, to);
    }

    protected override void WriteText(FaultsOverTime faults, View view, TextWriter output)
    {
        if (faults.Sheets == 0)
        {
            output.WriteLine("No sheet was developed.");
            return;
        }

        output.WriteLine($"{faults.Rejects} of {faults.Sheets} sheets are rejects");
        foreach (var grouping in Enum.GetValues<FaultGrouping>())
        {
            var rows = faults.By(grouping);
            if (rows.Count == 0)
                continue;
            output.WriteLine();
            var hasCauses = grouping != FaultGrouping.Cause;
            var table = new TextTable([
                Column.Left("by " + FaultsOverTime.Groupings[(int)grouping]), Column.Right("rejects"),
                    Column.Right("of"), Column.Right("share"),
                .. hasCauses ? [Column.Left("causes"), Column.Left("")] : Array.Empty<Column>(),
            ]);
            foreach (var row in rows)
                table.Add([
                    row.Name, Scaled.ToText(row.Rejects, 0), Scaled.ToText(row.Sheets, 0), row.Percent is { } percent
                        ? $"{Scaled.ToText(percent, 1)} %" : "-",
                    .. hasCauses ? [row.CausesText, row.Verdict(rows.Count)] : Array.Empty<string>(),
                ]);
            table.WriteTo(output, view.Width);
        }
    }

    protected override void WriteJson(FaultsOverTime faults, View view, Utf8JsonWriter json)
    {
        json.WriteDate("from", faults.From);
        json.WriteDate("to", faults.To);
        json.WriteNumber("sheets", faults.Sheets);
        json.WriteNumber("rejects", faults.Rejects);
        foreach (var grouping in Enum.GetValues<FaultGrouping>())
        {
            var rows = faults.By(grouping);
            json.WriteStartArray("by" + FaultsOverTime.Groupings[(int)grouping][..1].ToUpperInvariant()
                + FaultsOverTime.Groupings[(int)grouping][1..]);
            foreach (var row in rows)
                Write(row, rows.Count, json);
            json.WriteEndArray();
        }
    }

    private static void Write(FaultRow row, int rows, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("name", row.Name);
        json.WriteNumber("sheets", row.Sheets);
        json.WriteNumber("rejects", row.Rejects);
        json.WriteFigure("percent", row.Percent is { } percent ? decimal.Round(percent, 2) : null);
        if (row.Chance is { } chance)
            json.WriteNumber("chance", chance);
        else
            json.WriteNull("chance");
        json.WriteString("verdict", row.Verdict(rows));
        json.WriteBoolean("isFew", row.IsFew);
        json.WriteStartObject("causes");
        foreach (var (cause, sheets) in row.Causes)
            json.WriteNumber(cause, sheets);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
