using System.CommandLine;
using System.Text.Json;
using Ledger.App.Output;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Storage;
using NodaTime;

namespace Ledger.App.Commands.Show;

/// <summary>Shows one reading, as text or as one JSON document, as it stands today or stood on another day.</summary>
/// <typeparam name="TReading">What is shown.</typeparam>
internal abstract class ShowCommand<TReading> : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Option<bool> _json = new("--json") { Description = "one JSON document instead of text" };
    private readonly Option<LocalDate?> _asOf = Typed.Option(
        "--as-of", "DATE", Text.Date, "the ledger as it stood on that day, with that day as today");

    private readonly Option<LocalDate?> _knownOn = Typed.Option(
        "--known-on", "DATE", Text.Date,
        "only what had been recorded by the end of that day; otherwise all that is known now. Without --as-of the ledger stands as on that day");

    protected ShowCommand(Workbench bench, string name, string summary, string details = "")
        : base(name, summary, details)
    {
        _bench = bench;
        Options.Add(_asOf);
        Options.Add(_knownOn);
        Options.Add(_json);
        SetAction(Run);
    }

    /// <summary>Reads what is shown.</summary>
    protected abstract TReading Read(View view, ParseResult parse);

    /// <summary>Writes it for a person.</summary>
    protected abstract void WriteText(TReading reading, View view, TextWriter output);

    /// <summary>Writes the fields of its JSON document.</summary>
    protected abstract void WriteJson(TReading reading, View view, Utf8JsonWriter json);

    /// <summary>How the command ends.</summary>
    protected virtual int Status(TReading reading, ParseResult parse) => ExitStatus.Done;

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        using var then = parse.GetValue(_knownOn) is { } day && day < ledger.Today ? ledger.KnownOn(day) : null;
        var shown = then ?? ledger;
        return shown.Read(() => Show(shown, parse));
    }

    private int Show(LedgerFile ledger, ParseResult parse)
    {
        var asOf = parse.GetValue(_asOf) ?? ledger.Today;
        var view = new View(ledger, ledger.HoldingsOn(asOf), asOf, _bench.Around.Width);
        var reading = Read(view, parse);
        if (parse.GetValue(_json))
            JsonText.Write(_bench.Around.Out, json => WriteJson(reading, view, json));
        else
        {
            using var text = new FittedText(_bench.Around.Out, view.Width);
            WriteText(reading, view, text);
        }

        return Status(reading, parse);
    }
}

/// <summary>What a show command looks at.</summary>
/// <param name="Ledger">The ledger.</param>
/// <param name="Holdings">What it holds on the day.</param>
/// <param name="AsOf">The day.</param>
/// <param name="Width">The columns that text may take.</param>
internal sealed record View(ILedger Ledger, Holdings Holdings, LocalDate AsOf, int Width)
{
    public string Currency => Holdings.Settings.Currency;

    public MeasureStyle Style => Holdings.Settings.Style;
}
