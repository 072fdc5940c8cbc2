using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>Items, processes and settings: what may be defined, and what may not change once it is in use.</summary>
internal static class DefinitionRules
{
    private static readonly Area LeastFormat = Area.FromSquareInches(0.1m);
    private static readonly Area LargestFormat = Area.FromSquareInches(10_000);

    public static void Post(ItemDefinition definition, Draft draft)
    {
        var item = definition.Item with
        {
            Code = Require.Name(definition.Item.Code, "an item"),
            Name = Require.Name(definition.Item.Name, $"item {definition.Item.Code}"),
        };
        Require.That(
            item.Code.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.'),
            $"the item code \"{item.Code}\" may hold letters, digits, dots and dashes only; the full name goes into "
                + "the name");
        Check(item);
        if (draft.Holdings.Item(item.Code) is { } known)
        {
            Require.That(
                known.Unit == item.Unit && known.Format == item.Format && known.Kind == item.Kind,
                $"{item.Code} is kept as {known.Kind.Name()} in {known.Unit.Plural()}"
                    + $"{(known.Format is { } f ? $" of {f}" : "")}; "
                + "give the changed product a code of its own");
            item = item with { Id = known.Id, Code = known.Code };
        }
        else
            item = item with { Id = new(draft.Holdings.LastItem + 1) };

        draft.Add(new ItemDefined(item));
        draft.Summary = $"item {item.Code}: {item.Name}";
    }

    public static void Post(FormatDefinition definition, Draft draft)
    {
        var format = definition.Format;
        Require.Name(format.Code, "a format");
        Require.That(Format.CodeOf(format.Code) is not null,
            $"\"{format.Code}\" is not accepted: {Format.AcceptedName}");
        Require.That(format.Unit is Unit.Sheet or Unit.Roll, $"{format.Code} must be counted in sheets or rolls");
        Require.That(
            format.Area >= LeastFormat && format.Area <= LargestFormat,
            $"the area of {format.Code} must be from {LeastFormat.ToText(draft.Style)} to "
                + $"{LargestFormat.ToText(draft.Style)}");
        Require.That(
            !draft.Holdings.Formats.TryFind(format.Code, out var known) || known.Unit == format.Unit,
            $"{format.Code} is counted in {known?.Unit.Plural()}; give the other one a name of its own");
        draft.Add(new FormatDefined(format));
        draft.Show($"a {format.Unit.Name()} of {format.Code}", known?.Area.ToText(draft.Style) ?? "-",
            format.Area.ToText(draft.Style));
        draft.Summary = $"format {format.Code}: {format.Area.ToText(draft.Style)}";
    }

    public static void Post(ProcessDefinition definition, Draft draft)
    {
        var name = Require.Name(definition.Process, "a process");
        Require.That(definition.Steps.Count > 0, $"process {name} has no steps; give it at least one");
        Require.That(
            definition.Steps.Select(step => step.Number).Distinct().Count() == definition.Steps.Count,
            $"process {name} has two steps of the same number; number them from 1 on");
        Require.That(
            definition.Steps.Count(step => step.Role == ItemRole.Developer) <= 1,
            $"process {name} develops in two steps; give the second the role other, so that what it uses is counted");
        foreach (var step in definition.Steps)
            Check(step, name, draft);
        var known = draft.Holdings.Process(name);
        var id = known?.Id ?? new(draft.Holdings.Processes.Select(other => other.Id.Value).DefaultIfEmpty().Max() + 1);
        var steps = definition.Steps.OrderBy(step => step.Number).ToList();
        var version = known is null ? 1 : known.Steps.SequenceEqual(steps) ? known.Version : known.Version + 1;
        var process = new Process(id, known?.Name ?? name, steps) { Version = version };
        draft.Add(new ProcessDefined(process));
        draft.Summary = $"process {process.VersionName}: {definition.Steps.Count} steps";
    }

    public static void Post(SettingChange change, Draft draft)
    {
        var setting = Setting.Named(change.Setting)
            ?? throw RefusedException.Unknown($"setting \"{change.Setting}\"", Setting.All.Select(known => known.Name));
        var settings = setting.Read(draft.Holdings.Settings, change.Value);
        Require.That(settings is not null, $"{setting.Name} accepts {setting.Accepted}, not \"{change.Value}\"");
        var (written, value) = (setting.Text(settings!), change.Value);
        if (written.Equals(value.Trim(), StringComparison.OrdinalIgnoreCase))
            value = written;
        Require.That(
            setting.Name != "currency" || draft.Holdings.Settings.Currency is ""
                || draft.Holdings.Settings.Currency == value,
            $"the ledger is kept in {draft.Holdings.Settings.Currency}; that cannot change once something was bought");
        draft.Add(new SettingChanged(setting.Name, value, settings!));
        draft.Summary = $"setting {setting.Name}: {value}";
    }

    private static void Check(Item item)
    {
        Require.Unit(item, item.Pack);
        Require.Positive(item.Pack, $"the pack of {item.Code}");
        Require.That(!item.Role.IsOfStepsOnly(),
            $"{item.Code} cannot be a {item.Role.Name()}: that is a step of a process, not something bought");
        if (item.Kind == ItemKind.Film)
        {
            Require.That(item.Format is not null, $"{item.Code} is film and needs a format, such as 4x5 or 8x10");
            Require.That(
                item.Unit == item.Format!.Unit,
                $"{item.Code} in {item.Format} is counted in {item.Format.Unit.Plural()}, not {item.Unit.Plural()}");
        }
        else
            Require.That(item.Format is null,
                $"{item.Code} is a {item.Kind.Name()}, and only film and paper have a format; leave the format out");

        Require.That(item.FixerFactorThousandths is >= 100 and <= 10_000,
            $"the fixer factor of {item.Code} must be from 0.1 to 10");
        Require.That(item.Capacity is null or { PerLitre.Hundredths: > 0 },
            $"the capacity of {item.Code} must be more than nothing; leave it out where it is not known");
        Require.That(
            item.Capacity is null || !string.IsNullOrWhiteSpace(item.Capacity.Basis),
            $"the capacity of {item.Code} needs its basis: maker's, handbook, strict or own");
        Require.That(
            item.OtherCapacities.All(one => one.PerLitre.Hundredths > 0 && !string.IsNullOrWhiteSpace(one.Basis)),
            $"each capacity of {item.Code} must be more than nothing and needs its basis");
        Require.That(
            item.ReplenisherCeilingPercent is null or (> 0 and <= 10_000),
            $"the replenisher ceiling of {item.Code} must be from 1 to 10000 per cent");
        if (item.Indicator is { } indicator)
            Require.Name(indicator, $"the colour of {item.Code}'s indicator");
        Require.That(item.ServiceLevel is null or (> 0 and < 1),
            $"the service level of {item.Code} must be between 0 and 1, such as 0.95");
        Require.That(item.LeadTimeDays is null or (>= 0 and <= 3650),
            $"the lead time of {item.Code} must be from 0 to 3650 days");
        if (item.MinimumOnHand is { } minimum)
        {
            Require.Unit(item, minimum);
            Require.That(minimum.Base >= 0, $"the minimum of {item.Code} cannot be negative");
        }

        Require.That(
            item.Keeping.All.All(limit => limit is null or (> 0 and <= 36_500)),
            $"a keeping limit of {item.Code} must be from 1 to 36500");
    }

    private static void Check(ProcessStep step, string process, Draft draft)
    {
        var where = $"step {step.Number} of process {process}";
        Require.That(step.Number > 0, $"{where} must have a number from 1 on");
        Require.That(step.Minutes is null or (>= 0 and <= 10_000), $"the minutes of {where} must be from 0 to 10000");
        Require.That(step.Celsius is null or (>= 0 and <= 60), $"the temperature of {where} must be from 0 to 60 °C");
        Require.That(
            step.Item is not null || (step.Amount is null && step.Dilution is null),
            $"{where} says how much, but not of what; name the item");
        if (step.Item is null)
            return;
        var item = draft.Item(step.Item);
        if (step.Amount is { } amount)
            Require.Unit(item, amount);
        if (step.Use == StepUse.Reused)
            return;
        Require.That(step.AmountEach is not null, $"{where} needs an amount, or a working volume with a dilution");
        Require.Unit(item, step.AmountEach!.Value);
        Require.Positive(step.AmountEach.Value, $"the amount of {where}");
        CheckPer(step, where);
        Require.That(
            step.Role != ItemRole.Developer || step.Amount is not null || step.Dilution is not null
                || item.Dilution is not null,
            $"{where} develops and needs a dilution, such as 1+39");
    }

    /// <summary>
    /// What an amount is counted for must mean something: nothing that a user says is passed over in silence.
    /// </summary>
    private static void CheckPer(ProcessStep step, string where)
    {
        Require.That(
            step.Role != ItemRole.Developer || step.Per != StepPer.Session || !step.IsByVolume,
            $"{where} develops, and a one-shot developer is measured out per batch, sheet or litre; one that serves a "
                + "whole session is a bath: write reused");
        Require.That(
            step.Amount is not null || step.Per is not (StepPer.Sheet or StepPer.Litre),
            $"{where} is diluted into its working volume, which is filled per session or batch; per "
                + $"{step.Per.Name()} needs an amount");
        Require.That(
            step.Per != StepPer.Litre || step.WorkingVolume is not null,
            $"{where} counts per litre and needs the working volume");
    }
}
