using System.Globalization;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;
using Ledger.Terminal.Screens;
using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A step of a process is written down, changed or moved; the process has a new version then.</summary>
internal sealed class StepForm : FormModel
{
    private readonly Holdings _holdings;
    private readonly ProcessStep? _step;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="process">The process; null for a new one.</param>
    /// <param name="step">The step to change; null for a new one.</param>
    /// <param name="number">Where a new step goes.</param>
    public StepForm(ILedger ledger, string? process, ProcessStep? step, int number = 1)
        : base(ledger)
    {
        _holdings = ledger.HoldingsOn(ledger.Today);
        _step = step;
        Item = new("Item", 14, FieldKind.Choice)
        {
            Choices = () => _holdings.Items.Where(item => item.Kind != ItemKind.Film).Select(item => item.Code), Hint = "Empty for tap water.",
        };
        Process.Offer(process);
        Number.Offer((step?.Number ?? number).ToString(CultureInfo.InvariantCulture));
        Role.Offer((step?.Role ?? ItemRole.Developer).Name());
        Item.Offer(step?.Item);
        Dilution.Offer(step?.Dilution?.Text);
        Amount.Offer(step?.Amount is { } amount ? Scaled.ToText(amount.Value, 3) : "");
        Volume.Offer(step?.WorkingVolume is { } volume ? Scaled.ToText(volume.Millilitres, 3) : "");
        ByFormat.Offer(step?.VolumesByFormat?.Text);
        Use.Offer((step?.Use ?? StepUse.OneShot).Name());
        Per.Offer((step?.Per ?? StepNames.PerUnsaid(ItemRole.Developer)).Name());
        Minutes.Offer(step?.Minutes is { } minutes ? Scaled.ToText(minutes, 3) : "");
        Celsius.Offer(step?.Celsius is { } celsius ? Scaled.ToText(celsius, 1) : "");
        Note.Offer(step?.Note);
    }

    public override string Title => _step is null ? "New step" : $"Step {_step.Number}";

    public override IReadOnlyList<string> Purpose =>
    [
        "A step of a process: presoak, developer, stop, fixer, wash aid, wash, final rinse, or a supply that is used up.",
        "A step with a bath that is used again is \"reused\"; any other uses up its amount, "
        + "or what its dilution asks for, each session, batch, sheet or litre.",
        "Another number moves the step. Saving makes a new version of the process; sessions of the past keep theirs.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        [[Process, Number, Role], [Item, Dilution, Amount], [Volume, ByFormat], [Use, Per], [Minutes, Celsius], [Note]];

    public override FormField First => Process.IsEmpty ? Process : Role;

    public FormField Process { get; } = new("Process", 16);

    public FormField Number { get; } = new("step", 3, FieldKind.Figure) { Hint = "Its place in the order; another number moves it." };

    public FormField Role { get; } = new("what", 13, FieldKind.Choice) { Choices = () => ItemNames.Roles };

    public FormField Item { get; }

    public FormField Dilution { get; } = new("dilution", 8) { Hint = "Such as 1+49; empty for the item's usual one, or where an amount is used." };

    public FormField Amount { get; } = new("or amount", 8, FieldKind.Figure) { Hint = "In the item's unit: grams, millilitres, pieces." };

    public FormField Volume { get; } = new("In ml", 8, FieldKind.Figure) { Hint = "The working solution in the tray." };

    public FormField ByFormat { get; } = new("formats", 24) { Hint = "Other volumes by format: 4x5=600 11x14=2000." };

    public FormField Use { get; } = new("Use", 10, FieldKind.Choice) { Choices = () => StepNames.Uses };

    public FormField Per { get; } = new("per", 8, FieldKind.Choice) { Choices = () => StepNames.Pers };

    public FormField Minutes { get; } = new("Minutes", 6, FieldKind.Figure);

    public FormField Celsius { get; } = new("°C", 5, FieldKind.Figure);

    public FormField Note { get; } = new("Note", 50);

    /// <summary>What is counted for changes with what the step does, until the user says it.</summary>
    public override void Edited(FormField field)
    {
        if (field == Role && ItemNames.Roles.ToList().FindIndex(name => name == Role.Text.Trim()) is >= 0 and var role)
            Per.Offer(StepNames.PerUnsaid((ItemRole)role).Name());
    }

    protected override Entry Read(Answers answers)
    {
        var name = answers.Needed(Process);
        var others = (_holdings.Process(name)?.Steps ?? []).Where(step => step != _step).ToList();
        others.Insert(Math.Clamp(answers.Whole(Number), 1, others.Count + 1) - 1, Written(answers));
        return new ProcessDefinition
        {
            Key = EntryKey,
            Date = Ledger.Today,
            Process = name,
            Steps = [.. others.Select((step, i) => step with { Number = i + 1 })],
        };
    }

    protected override IReadOnlyList<Block> More(Posting posting) => posting.Entry is not ProcessDefinition definition ? [] :
        [Block.Facts("The process then", definition.Steps.Select(step => ($"  {step.Number} {step.Role.Name()}", (string?)ProcessesModel.Line(step))))];

    private ProcessStep Written(Answers answers) => new()
    {
        Number = 1,
        Role = (ItemRole)answers.OneOf(Role, ItemNames.Roles),
        Item = Answers.Optional(Item),
        Dilution = answers.Dilution(Dilution),
        Amount = answers.Quantity(Amount, _holdings.Item(Item.Text)?.Unit ?? Unit.Millilitre),
        WorkingVolume = answers.Volume(Volume),
        VolumesByFormat = Formats(answers),
        Use = (StepUse)answers.OneOf(Use, StepNames.Uses),
        Per = (StepPer)answers.OneOf(Per, StepNames.Pers),
        Minutes = answers.OptionalFigure(Minutes),
        Celsius = answers.OptionalFigure(Celsius),
        Note = Note.Text.Trim(),
    };

    private FormatVolumes? Formats(Answers answers)
    {
        var volumes = FormatVolumes.Read(ByFormat.Text);
        if (volumes is null && !ByFormat.IsEmpty)
            answers.Problem($"formats: \"{ByFormat.Text.Trim()}\" is not accepted; write {FormatVolumes.Accepted}");
        return volumes;
    }
}
