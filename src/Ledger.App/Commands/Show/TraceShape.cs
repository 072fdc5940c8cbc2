namespace Ledger.App.Commands.Show;

/// <summary>Traces, what is at risk, and the cards of sheets in documents.</summary>
internal static class TraceShape
{
    /// <summary>What is known of a sheet.</summary>
    public static Shape<SheetCard> Card { get; } = new Shape<SheetCard>()
        .Text("sheet", card => card.Id.ToString())
        .Word("negative", card => card.Negative)
        .Date("date", card => card.Date)
        .Text("subject", card => card.Subject)
        .Text("item", card => card.Item)
        .Text("format", card => card.Format)
        .Text("batch", card => card.Emulsion, "the film's emulsion number")
        .Text("box", card => card.Box)
        .Word("side", card => card.Side)
        .Text("group", card => card.Group)
        .Date("loadedOn", card => card.LoadedOn)
        .Date("exposedOn", card => card.ExposedOn)
        .Word("session", card => card.Session)
        .Date("developedOn", card => card.DevelopedOn)
        .Whole("inBatch", card => card.Batch)
        .Word("process", card => card.Process)
        .Texts("baths", card => card.Baths)
        .Word("fate", card => card.Fate?.Name())
        .Word("cause", card => card.Cause?.Name())
        .Text("place", card => card.Place)
        .Word("filedIn", card => card.FiledIn)
        .Word("lastFinding", card => card.LastFinding?.Text);

    private static readonly Shape<(TraceNode Node, TraceLabel Label)> _node =
        new Shape<(TraceNode Node, TraceLabel Label)>()
            .Text("kind", row => row.Node.Kind.Name())
            .Text("name", row => row.Label.Name)
            .Text("text", row => row.Label.Text);

    private static readonly Shape<BathMoment> _moment = new Shape<BathMoment>()
        .Area("beforeSqIn", moment => moment.Before)
        .Area("afterSqIn", moment => moment.After)
        .Figure("throughputSqInPerLitre", moment => moment.SquareInchesPerLitre)
        .Whole("ageDays", moment => moment.AgeDays)
        .Whole("rotations", moment => moment.Bath.Rotations)
        .Date("lastTestOn", moment => moment.LastTest?.Date)
        .Word("lastTest", moment => moment.LastTest?.Text)
        .Word("pastLimit", moment => moment.PastLimit);

    private static readonly Shape<(TraceStep Step, bool HasCount)> _step = new Shape<(TraceStep Step, bool HasCount)>()
        .With((row, _) => (row.Step.Node, row.Step.Label), _node)
        .Date("on", row => row.Step.On)
        .Flag("isShared", row => row.Step.IsShared)
        .If((row, _) => row.HasCount, new Shape<(TraceStep Step, bool HasCount)>()
            .Whole("otherSheets", row => row.Step.OtherSheets)
            .Flag("areMore", row => row.Step.AreMore))
        .With((row, _) => row.Step.Bath!, _moment, (row, _) => row.Step.Bath is not null);

    private static readonly Shape<TraceReading> _trace = new Shape<TraceReading>()
        .Text("what", trace => trace.Name)
        .Table("start", (trace, _) => trace.Start.Zip(trace.StartLabels), _node)
        .Table("back", (trace, _) => trace.Back.Select(step => (step, trace.Card is not null)), _step)
        .Table("forward", (trace, _) => trace.Sheets, new Shape<TracedSheet>()
            .With((sheet, _) => sheet.Card, Card)
            .Date("reachedOn", sheet => sheet.On)
            .Flag("isShared", sheet => sheet.IsShared)
            .Texts("through", sheet => sheet.Through))
        .Table("things", (trace, _) => trace.Things.Select(thing => (thing, false)), _step)
        .Table("sameBatch", (trace, _) => trace.Mates, Card)
        .Table("sameBathSince", (trace, _) => trace.BathMates,
            new Shape<(TraceStep Bath, IReadOnlyList<SheetCard> Since)>()
                .Text("bath", row => row.Bath.Label.Name)
                .Table("sheets", (row, _) => row.Since, Card));

    private static readonly Shape<RiskReading> _risk = new Shape<RiskReading>()
        .Text("what", risk => risk.Name)
        .Date("by", risk => risk.By)
        .Table("sheets", (risk, _) => risk.Sheets, new Shape<SheetAtRisk>()
            .With((sheet, _) => sheet.Card, Card)
            .Text("level", sheet => sheet.Level.Name())
            .Date("reachedOn", sheet => sheet.On)
            .Text("reason", sheet => sheet.Reason)
            .Text("toDo", sheet => sheet.ToDo)
            .Flag("isFirst", sheet => sheet.IsFirst))
        .Table("things", (risk, _) => risk.Things, new Shape<ThingAtRisk>()
            .Text("name", thing => thing.Name)
            .Text("text", thing => thing.Text)
            .Text("toDo", thing => thing.ToDo));

    /// <summary>A trace, or what is at risk.</summary>
    public static Shape<TraceShown> Of { get; } = new Shape<TraceShown>()
        .AsOf()
        .With((shown, _) => shown.Trace!, _trace, (shown, _) => shown.Trace is not null)
        .With((shown, _) => shown.Risk!, _risk, (shown, _) => shown.Risk is not null)
        .Leading("forward");
}
