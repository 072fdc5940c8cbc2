using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Lays out the trays of a process in their order: one for each step that holds a solution or water.</summary>
internal sealed class PlannedTrays(SessionPlanDraft draft)
{
    private readonly List<PlannedTray> _trays = [];
    public IReadOnlyList<PlannedTray> Of(IReadOnlyList<BathOutlook> outlooks)
    {
        var baths = outlooks.GroupBy(outlook => outlook.Item, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(item => item.Key, item => new Queue<BathTray>(BathTray.Of([.. item])),
                StringComparer.OrdinalIgnoreCase);
        var steps = Steps(baths).ToList();
        var fixers = steps.Count(step => step.Role == ItemRole.Fixer);
        var fixer = 0;
        foreach (var step in steps)
        {
            if (ReferenceEquals(step, draft.Process.Developer))
                Developer(step);
            else if (IsTray(step))
                Add(step, Name(step, step.Role == ItemRole.Fixer ? ++fixer : 0, fixers),
                    Parts(step, Next(step, baths)));
        }

        return _trays;
    }

    /// <summary>
    /// The steps; where a pair is in use and the process says fixer once, its second bath has a tray all the same.
    /// </summary>
    private IEnumerable<ProcessStep> Steps(Dictionary<string, Queue<BathTray>> baths)
    {
        foreach (var step in draft.Process.Steps)
        {
            yield return step;
            var alike = draft.Process.Reused.Where(other => Same(other.Item, step.Item)).ToList();
            if (step.Role == ItemRole.Fixer && alike is [.., var last] && ReferenceEquals(last, step)
                && baths.TryGetValue(step.Item!, out var trays))
                for (var more = trays.Count - alike.Count; more > 0; more--)
                    yield return step;
        }
    }

    private static bool Same(string? item, string? other) =>
        string.Equals(item, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>
    /// A tray holds a chemical, or is one of the steps in water; a supply, or bought water without a tray, is none.
    /// </summary>
    private bool IsTray(ProcessStep step) =>
        step.Role.IsOfStepsOnly()
        || (step.Role == ItemRole.Water && (step.Item is null || step.WorkingVolume is not null))
        || (step.Role is not (ItemRole.Other or ItemRole.Water or ItemRole.Developer)
            && (step.Item is null || draft.Item(step.Item).Kind == ItemKind.Chemical));

    /// <summary>
    /// What a reused step's tray holds: the first bath of its item, then the second; another one is mixed like the step
    /// says.
    /// </summary>
    private static BathTray? Next(ProcessStep step, Dictionary<string, Queue<BathTray>> baths) =>
        step is { Use: StepUse.Reused, Item: { } item }
            ? baths.TryGetValue(item, out var trays) && trays.TryDequeue(out var tray) ? tray : new()
            : null;

    private static string Name(ProcessStep step, int fixer, int fixers) => step.Role switch
    {
        ItemRole.Fixer when fixers > 1 => $"fixer {fixer}",
        _ => step.Role.Name(),
    };

    /// <summary>
    /// One developer tray, and in it what a batch takes; where batches differ, the first one's figures stand here and
    /// each batch has its own.
    /// </summary>
    private void Developer(ProcessStep step)
    {
        var first = draft.Batches[0].Developer;
        var parts = new List<TrayPart>();
        if (first is not null)
        {
            parts.Add(Measured(first.Item.Code, first.Measured, first.Need.Concentrate));
            parts.AddRange(first.OtherParts.Select(part => Measured(part.Name, part.Measured, part.Exact)));
            parts.Add(new("water", Quantity.Of(first.Water)));
        }
        else if (step is { Item: { } item, Amount: { } amount })
            parts.Add(new(item, amount));
        _trays.Add(Tray(step, "developer", parts) with
        {
            Volume = first?.Need.WorkingVolume ?? step.WorkingVolume, IsPerBatch = true, Minutes = null,
        });
    }

    private static TrayPart Measured(string what, Volume measured, Volume exact) =>
        new(what, Quantity.Of(measured), measured == exact ? null : Quantity.Of(exact));

    private List<TrayPart> Parts(ProcessStep step, BathTray? bath)
    {
        var volume = step.WorkingVolumeFor(draft.Loads);
        if (bath is not null)
            return bath.Text is { } text
                ? [new(text, bath.Stands is { } standing ? Quantity.Of(standing.WorkingVolume) : null)]
                : Fresh(step, bath.Like, bath.Like?.WorkingVolume ?? volume);
        if (step.Item is not { } item)
            return [new("water", volume is { } water ? Quantity.Of(water) : null)];
        if (step.Per == StepPer.Sheet)
            return [new($"{item} for each sheet", step.AmountEach)];
        var amount = (step.Per == StepPer.Batch ? step.AmountIn(draft.Loads) : step.DrawnFor(draft.Loads))!.Value;
        List<TrayPart> parts = [new(item, amount)];
        if (amount.Unit == Unit.Millilitre)
            parts.AddRange(step.OthersBeside(draft.Item(item), amount)
                .Select(part => new TrayPart(part.Name, Quantity.Of(part.Measured))));
        if (volume is not { } whole)
            return parts;
        var rest = Math.Max(0,
            whole.Microlitres - parts.Sum(part => part.Amount is { Unit: Unit.Millilitre } poured ? poured.Base : 0));
        return rest == 0 ? parts : [.. parts, new("water", new(rest, Unit.Millilitre))];
    }

    /// <summary>What a bath is mixed of that is not there yet; a powder is weighed out as its package says.</summary>
    private List<TrayPart> Fresh(ProcessStep step, Bath? like, Volume? volume)
    {
        var item = draft.Item(step.Item!);
        if ((like?.Dilution ?? step.Dilution ?? item.Dilution) is not { } dilution || volume is not { } whole
            || item.Unit != Unit.Millilitre)
            return [new($"{item.Code}, to be mixed fresh", volume is { } bathful ? Quantity.Of(bathful) : null)];
        var first = dilution.SourceIn(whole);
        List<TrayPart> parts =
        [
            new($"{item.Code} for a fresh bath", Quantity.Of(first)),
            .. OtherPart.Beside(item, dilution, first)
                .Select(part => new TrayPart(part.Name, Quantity.Of(part.Measured))),
        ];
        return [.. parts,
            new("water", Quantity.Of(whole - Volume.FromMicrolitres(parts.Sum(part => part.Amount!.Value.Base))))];
    }

    private void Add(ProcessStep step, string name, IReadOnlyList<TrayPart> parts) =>
        _trays.Add(Tray(step, name, parts));

    private PlannedTray Tray(ProcessStep step, string name, IReadOnlyList<TrayPart> parts) =>
        new(_trays.Count + 1, name, step.Role, parts)
        {
            Volume = step.WorkingVolumeFor(draft.Loads),
            Minutes = step.Minutes,
            Celsius = step.Celsius,
            IsPerBatch = step.Per == StepPer.Batch,
            Note = step.Note,
        };
}
