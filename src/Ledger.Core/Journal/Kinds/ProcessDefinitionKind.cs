using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record process, processes.csv: the steps of a process, a line for each.</summary>
internal static class ProcessDefinitionKind
{
    private static readonly Field<string> Process = new("process", Notations.Name("PROCESS"))
    {
        Help = "the process's name", Example = "tray", IsNeeded = true, IsArgument = true, Width = 16,
        Choices = Offered.Processes,
    };

    private static readonly Field<int> Number = new("step", Notations.Whole(1, 1000))
    {
        Help = "its place in the order; otherwise after the one before it", Example = "1", Width = 3, Keyword = "step",
    };

    private static readonly Field<ItemRole> Role = new("role", Words.StepRoles)
    {
        Label = "what", Help = "what the step does", Example = "developer", IsNeeded = true, Width = 13,
        Choices = (_, _) => Words.StepRoles.Words,
    };

    private static readonly Field<string> Item = new("item", Notations.Known("ITEM"))
    {
        Help = "the item it uses; nothing for tap water", Example = "syrup", Width = 14,
        Choices = (_, holdings) => holdings.Items.Where(item => item.Kind != ItemKind.Film).Select(item => item.Code),
    };

    private static readonly Field<Dilution> Dilution = new("dilution", Notations.Dilution)
    {
        Help = "how the item is diluted, such as 1+49; otherwise as usual, or where an amount is used",
        Example = "1+49", Width = 8,
    };

    private static readonly Field<Quantity> Amount = new("amount", Notations.AmountOf(
        (read, terms) => read.Find(Item) is { } code ? terms.ItemOf(code) : null, Unit.Piece))
    {
        Label = "or amount", Help = "what is used each time, in the item's unit: 30g, 1 piece", Example = "", Width = 8,
    };

    private static readonly Field<Volume> WorkingVolume = new("working_ml", Notations.Volume)
    {
        Label = "In ml", Help = "the working solution in the tray", Example = "1250", Width = 8, Keyword = "in",
    };

    private static readonly Field<FormatVolumes> ByFormat = new(
        "working_ml_by_format",
        Notations.Of("FORMAT=ML", FormatVolumes.Read, volumes => volumes.Text, FormatVolumes.Accepted))
    {
        Label = "formats", Help = "other volumes by format: 4x5=600 11x14=2000", Example = "4x5=600", Width = 24,
    };

    private static readonly Field<StepUse> Use = new("use", Words.Uses)
    {
        Help = "one-shot, or reused for a bath that is kept; otherwise one-shot", Example = "one-shot", Width = 10,
        Choices = (_, _) => Words.Uses.Words,
    };

    private static readonly Field<decimal> Minutes = new("minutes", new(
        (text, read, terms) => MinutesAlone.Read(Without(text, "minutes", "min"), read, terms), MinutesAlone.Write)
        { Placeholder = "MINUTES", Shape = Shape.Number })
    {
        Help = "how long it lasts, in minutes", Example = "11", Width = 6, Keyword = "for",
    };

    private static readonly Field<decimal> Celsius = new("temperature_c", new(
        (text, read, terms) => CelsiusAlone.Read(Without(text, "°C", "C", "°"), read, terms), CelsiusAlone.Write)
        { Placeholder = "CELSIUS", Shape = Shape.Number })
    {
        Label = "°C", Help = "its temperature in degrees Celsius", Example = "20", Width = 5, Keyword = "at",
    };

    private static readonly Field<StepPer> Per = new("per", Words.Pers)
    {
        Help = "what the amount is for: session, batch, sheet or litre; otherwise a batch for a developer, a session "
            + "for anything else",
        Example = "batch", Width = 8, Keyword = "per", Choices = (_, _) => Words.Pers.Words,
        Offer = (read, _) => StepNames.PerUnsaid(read.Of(Role)).Name(),
    };

    private static readonly Field<string> StepNote = new("note", Notations.Line(10_000))
    {
        Help = "a note to the step", Example = "", Width = 50, Keyword = ":",
    };

    private static Notation<decimal> MinutesAlone => Notations.Number(0, 10_000, 6, "MINUTES");

    private static Notation<decimal> CelsiusAlone => Notations.Number(0, 60, 6, "CELSIUS");

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<ProcessDefinition>
    {
        Name = "process",
        File = "processes",
        Title = "Process",
        Purpose = "Defines a process by its steps, or replaces the steps of a known one.",
        Details =
        [
            "A step that is reused passes through a bath; any other uses up its amount, or what its dilution asks for. "
                + "Sessions of the past keep the version they were run with.",
        ],
        Example = "tray --step \"presoak for 2\" --step \"developer syrup 1+49 in 1250ml for 11 per batch\" --step "
            + "\"fixer tarnfix in 1.5l reused for 5\"",
        IsDated = false,
        NamedBy = Process,
        IsReplaceable = true,
        Bound = [new(Process, entry => entry.Process)],
        Line = new LineKind<ProcessStep>
        {
            Name = "steps",
            Option = "--step",
            Help = "each step in order: what it does, the item, its dilution or amount, the volume, the minutes",
            Bound =
            [
                new(Number, step => step.Number == 0 ? null : step.Number), new(Role, step => step.Role),
                new(Item, step => step.Item),
                new(Dilution, step => step.Dilution), new(Amount, step => step.Amount),
                new(WorkingVolume, step => step.WorkingVolume),
                new(ByFormat, step => step.VolumesByFormat),
                new(Use, step => step.Use == StepUse.OneShot ? null : step.Use),
                new(Minutes, step => step.Minutes), new(Celsius, step => step.Celsius),
                new(Per, step => step.Per == StepNames.PerUnsaid(step.Role) ? null : step.Per),
                new(StepNote, step => Given.Text(step.Note)),
            ],
            With = values => new()
            {
                Number = values.Of(Number), Role = values.Of(Role), Item = values.Find(Item),
                Dilution = values.Find(Dilution),
                Amount = values.Maybe(Amount), WorkingVolume = values.Maybe(WorkingVolume),
                VolumesByFormat = values.Find(ByFormat),
                Use = values.Of(Use), Minutes = values.Maybe(Minutes), Celsius = values.Maybe(Celsius),
                Per = values.Maybe(Per) ?? StepNames.PerUnsaid(values.Of(Role)), Note = values.Find(StepNote) ?? "",
            },
        },
        Lines = entry => entry.Steps,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Process = values.Of(Process),
            Steps = [.. values.LinesOf<ProcessStep>()
                .Select((step, i) => step.Number > 0 ? step : step with { Number = i + 1 })],
        },
    };

    private static string Without(string text, params string[] units)
    {
        var unit = units.FirstOrDefault(unit => text.EndsWith(unit, StringComparison.OrdinalIgnoreCase));
        return unit is null ? text : text[..^unit.Length].TrimEnd();
    }
}
