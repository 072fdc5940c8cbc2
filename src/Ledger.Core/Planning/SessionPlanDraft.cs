using Ledger.Core.Film;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>What a plan is worked out from, once every name in the request is known.</summary>
internal sealed class SessionPlanDraft
{
    private const int MostSheets = 1000;
    private readonly HashSet<SheetId> _known = [];

    public SessionPlanDraft(PlanRequest request, Holdings holdings, LocalDate day)
    {
        (Request, Holdings, Day) = (request, holdings, day);
        Process = holdings.Process(request.Process)?.Knowing(Item)
            ?? throw RefusedException.Unknown($"process \"{request.Process}\"",
                holdings.Processes.Select(known => known.Name));
        Sheets = [.. request.Sheets.SelectMany(Resolve)];
        if (Sheets.Count == 0)
            throw new RefusedException(RefusalKind.NotAccepted, "a plan needs at least one line of sheets");
        Batches = [.. Batching.Of(Sheets, Practice).Select(Measured)];
    }

    public PlanRequest Request { get; }

    public Holdings Holdings { get; }

    public LocalDate Day { get; }

    public Process Process { get; }

    public IReadOnlyList<SheetsToDevelop> Sheets { get; }

    public IReadOnlyList<PlannedBatch> Batches { get; }

    public TrayPractice Practice => Holdings.Settings.Tray;

    public MeasureStyle Style => Holdings.Settings.Style;

    public int SheetCount => Batches.Sum(batch => batch.Sheets.Count);

    /// <summary>The parts of solutions that no item stands for, so that nothing can be said of them.</summary>
    public IReadOnlyList<string> UnknownParts =>
    [
        .. Process.Steps.Where(step => step is { Use: StepUse.OneShot, Item: not null })
            .Select(step => OtherPart.Unknown(Item(step.Item!), step.Dilution ?? Item(step.Item!).Dilution))
            .OfType<string>(),
    ];

    /// <summary>What lies in the trays together, batch by batch.</summary>
    public IReadOnlyList<TrayLoad> Loads =>
        [.. Batches.Select(batch => new TrayLoad(batch.Film.Format, batch.Sheets.Count))];

    /// <summary>
    /// The area that passes through the baths, dummies among it, rounded as the session's lines are; weighted for a
    /// fixer.
    /// </summary>
    public Area Through(bool weighted) => Batches.Aggregate(
        Area.Zero, (sum, batch) => SessionLines.Of(batch).Select(line => batch.Film.AreaOf(line.Sheets)).Aggregate(
            sum, (total, area) => total + (weighted ? area.Weighted(batch.Film.FixerFactorThousandths) : area)));

    public Item Item(string code) =>
        Holdings.Item(code) ?? throw RefusedException.Unknown($"item \"{code}\"", Holdings.ItemCodes);

    private IEnumerable<SheetsToDevelop> Resolve(RequestedSheets line)
    {
        var film = Item(line.Film);
        if (film.Format is null)
            throw new RefusedException(RefusalKind.NotAccepted,
                $"{film.Code} is a {film.Kind.Name()} and cannot be developed; name a film");
        if (line.Count is < 1 or > MostSheets)
            throw new RefusedException(
                RefusalKind.NotAccepted,
                $"the {film.Unit.Plural()} of {film.Code} must be from 1 to {MostSheets}, not {line.Count}");
        if (film.IsPaper)
            throw new RefusedException(RefusalKind.WrongMaterial,
                $"{film.Code} is paper; it never goes through the baths of a film session; record it as a print "
                    + "session");
        var known = KnownSheets.Of(line, film, Holdings);
        if (known.FirstOrDefault(sheet => !_known.Add(sheet.Id)) is { } twice)
            throw new RefusedException(RefusalKind.NotAccepted,
                $"sheet {twice.Id} from {twice.SideCode} is named twice; name it once");
        return known.Count == 0 ? [new(film, line.Group, line.Count, line.Subject, line.Holder) { Batch = line.Batch }]
            : known.Select(sheet => Known(line, film, sheet));
    }

    /// <summary>What is not said of a known sheet is taken from its exposure note.</summary>
    private SheetsToDevelop Known(RequestedSheets line, Item film, Sheet sheet) => new(
        film,
        line.Group.Trim().Length > 0 ? line.Group : sheet.Exposure?.Group ?? "",
        1,
        line.Subject.Length > 0 ? line.Subject : sheet.Exposure?.Subject ?? "",
        line.Holder.Length > 0 ? line.Holder : KnownSheets.HolderOf(sheet, Holdings.Film))
    {
        Known = sheet, Batch = line.Batch,
    };

    private PlannedBatch Measured(PlannedBatch batch) => Process.Developer is not { } step ? batch : batch with
    {
        Minutes = Request.Times.Of(batch.Group, step.Minutes),
        Developer = step.Item is { } code
            ? BatchDeveloper.Of(step, Item(code), batch.Film, batch.Sheets.Count, Practice.Graduate)
            : null,
    };
}
