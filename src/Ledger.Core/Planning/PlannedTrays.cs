using Ledger.Core.Baths;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>Lays out the trays of a process in their order: one for each step that holds a solution or water.</summary>
internal sealed class PlannedTrays(SessionPlanDraft draft)
{
    private readonly List<PlannedTray> _trays = [];
    private IReadOnlyList<BathOutlook> _outlooks = [];

    public IReadOnlyList<PlannedTray> Of(IReadOnlyList<BathOutlook> outlooks)
    {
        _outlooks = outlooks;
        var baths = outlooks.Select(outlook => outlook.Bath).OfType<Bath>().ToList();
        var steps = Steps(baths).ToList();
        var fixers = steps.Count(step => step.Role == ItemRole.Fixer);
        var fixer = 0;
        foreach (var step in steps)
        {
            if (ReferenceEquals(step, draft.Process.Developer))
                Developer(step);
            else if (IsTray(step))
                Add(step, Name(step, step.Role == ItemRole.Fixer ? ++fixer : 0, fixers), Parts(step, Next(step, baths)));
        }

        return _trays;
    }

    /// <summary>The steps; where a pair is in use and the process says fixer once, its second bath has a tray all the same.</summary>
    private IEnumerable<ProcessStep> Steps(List<Bath> baths)
    {
        foreach (var step in draft.Process.Steps)
        {
            yield return step;
            var alike = draft.Process.Reused.Where(other => Same(other.Item, step.Item)).ToList();
            if (step.Role == ItemRole.Fixer && alike is [.., var last] && ReferenceEquals(last, step))
                for (var more = baths.Count(bath => Same(bath.Item, step.Item)) - alike.Count; more > 0; more--)
                    yield return step;
        }
    }

    private static bool Same(string? item, string? other) => string.Equals(item, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A tray holds a chemical, or is one of the steps in water; a supply, or bought water without a tray, is none.</summary>
    private bool IsTray(ProcessStep step) =>
        step.Role.IsOfStepsOnly()
        || (step.Role == ItemRole.Water && (step.Item is null || step.WorkingVolume is not null))
        || (step.Role is not (ItemRole.Other or ItemRole.Water or ItemRole.Developer)
            && (step.Item is null || draft.Item(step.Item).Kind == ItemKind.Chemical));

    /// <summary>The bath that a reused step goes through: the first of its item, then the second.</summary>
    private static Bath? Next(ProcessStep step, List<Bath> baths)
    {
        var bath = step.Use == StepUse.Reused ? baths.Find(bath => bath.Item.Equals(step.Item, StringComparison.OrdinalIgnoreCase)) : null;
        if (bath is not null)
            baths.Remove(bath);
        return bath;
    }

    private static string Name(ProcessStep step, int fixer, int fixers) => step.Role switch
    {
        ItemRole.Fixer when fixers > 1 => $"fixer {fixer}",
        _ => step.Role.Name(),
    };

    /// <summary>
    /// One developer tray, and in it what a batch takes; where batches differ, the first one's figures stand here and each batch has its own.
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

    private List<TrayPart> Parts(ProcessStep step, Bath? bath)
    {
        if (bath is not null)
            return [new($"bath {bath.Code}", Quantity.Of(bath.WorkingVolume))];
        var volume = step.WorkingVolumeFor(draft.Loads);
        if (step.Use == StepUse.Reused)
            return [new(Wanted(step), volume is { } bathful ? Quantity.Of(bathful) : null)];
        if (step.Item is not { } item)
            return [new("water", volume is { } water ? Quantity.Of(water) : null)];
        if (step.Per == StepPer.Sheet)
            return [new($"{item} for each sheet", step.AmountEach)];
        var amount = (step.Per == StepPer.Batch ? step.AmountIn(draft.Loads) : step.DrawnFor(draft.Loads))!.Value;
        List<TrayPart> parts = [new(item, amount)];
        if (amount.Unit == Unit.Millilitre)
            parts.AddRange(step.OthersBeside(draft.Item(item), amount).Select(part => new TrayPart(part.Name, Quantity.Of(part.Measured))));
        if (volume is not { } whole)
            return parts;
        var rest = Math.Max(0, whole.Microlitres - parts.Sum(part => part.Amount is { Unit: Unit.Millilitre } poured ? poured.Base : 0));
        return rest == 0 ? parts : [.. parts, new("water", new(rest, Unit.Millilitre))];
    }

    /// <summary>A bath that is not there yet, or that the user has not named yet.</summary>
    private string Wanted(ProcessStep step) =>
        _outlooks.FirstOrDefault(bath => bath.Choices.Length > 0 && bath.Item.Equals(step.Item, StringComparison.OrdinalIgnoreCase)) is { } open
            ? $"bath {open.Choices}" : $"{step.Item}, to be mixed";

    private void Add(ProcessStep step, string name, IReadOnlyList<TrayPart> parts) => _trays.Add(Tray(step, name, parts));

    private PlannedTray Tray(ProcessStep step, string name, IReadOnlyList<TrayPart> parts) => new()
    {
        Number = _trays.Count + 1,
        Name = name,
        Role = step.Role,
        Parts = parts,
        Volume = step.WorkingVolumeFor(draft.Loads),
        Minutes = step.Minutes,
        Celsius = step.Celsius,
        IsPerBatch = step.Per == StepPer.Batch,
        Note = step.Note,
    };
}
