using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>A row of a trace: a thing that was come through, a sheet that shares it, or something at risk.</summary>
/// <param name="Way">Back, forward, the batch, the bath that is shared; or how near to the fault.</param>
/// <param name="Name">What it is called.</param>
/// <param name="On">The day.</param>
/// <param name="Text">What there is to say of it in the row.</param>
/// <param name="Where">Where a sheet is.</param>
internal sealed record TraceRow(string Way, string Name, LocalDate? On, string Text, string Where)
{
    /// <summary>The way of what was come through.</summary>
    public const string Back = "back";

    /// <summary>The sheet, where it is one.</summary>
    public SheetCard? Sheet { get; init; }

    /// <summary>What the details say.</summary>
    public IReadOnlyList<(string Label, string? Text)> Facts { get; init; } = [];

    /// <summary>The rows of a trace.</summary>
    public static IEnumerable<TraceRow> Of(TraceReading trace, MeasureStyle style) =>
    [
        .. trace.Back.Select(step => new TraceRow(Back, step.Label.Name, step.On, step.Label.Text,
            trace.Card is null ? "" : step.Others)
        {
            Facts =
            [
                ("What", step.Label.Text), ("Then", step.Bath?.Text(style)),
                ("Shared by", trace.Card is null ? null : step.Others),
                ("Way", step.IsShared ? "only by way of a bath or a box that others share" : null),
            ],
        }),
        .. trace.Card is null
            ? trace.Sheets.Select(sheet => Of(sheet.IsShared ? "forward, shared" : "forward", sheet.Card, sheet.On,
                [("Through", string.Join(", ", sheet.Through))]))
            : trace.Mates.Select(card => Of("same batch", card, card.DevelopedOn, []))
                .Concat(trace.BathMates.SelectMany(pair =>
                    pair.Since.Select(card => Of($"{pair.Bath.Label.Name} since", card, card.DevelopedOn, [])))),
        .. trace.Things.Select(thing => new TraceRow("forward", thing.Label.Name, thing.On, thing.Label.Text, "")
        {
            Facts = [("What", thing.Label.Text),
                ("Way", thing.IsShared ? "only by way of a bath or a box that others share" : null)],
        }),
    ];

    /// <summary>The rows of what shares a fault: what to keep apart, then the sheets.</summary>
    public static IEnumerable<TraceRow> Of(RiskReading risk) =>
    [
        .. risk.Things.Select(thing => new TraceRow("keep apart", thing.Name, null,
            RefusalText.Words(thing.ToDo), "")
        {
            Facts = [("What", thing.Text), ("Do", RefusalText.Words(thing.ToDo))],
        }),
        .. risk.Sheets.Select(sheet => Of(
            sheet.Level.Name(), sheet.Card, sheet.On,
            [("Reason", sheet.Reason), ("Do", sheet.ToDo),
                ("First", sheet.IsFirst ? "test this one first: it tells of its batch" : null)])),
    ];

    private static TraceRow Of(string way, SheetCard card, LocalDate? on,
        IReadOnlyList<(string Label, string? Text)> facts) =>
        new(way, card.Name, on, card.Subject.Length > 0 ? card.Subject : card.FateText, card.Where)
        {
            Sheet = card, Facts = [("Fate", card.FateText), .. facts],
        };
}
