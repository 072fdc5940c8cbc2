using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A step of a process is written down, changed or moved; the process has a new version then.</summary>
internal sealed class StepForm : ProcessForm
{
    private readonly ProcessStep? _step;

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="process">The process; null for a new one.</param>
    /// <param name="step">The step to change; null for a new one.</param>
    /// <param name="number">Where a new step goes.</param>
    public StepForm(ILedger ledger, string? process, ProcessStep? step, int number = 1)
        : base(ledger, ("process", process))
    {
        _step = step;
        if (step is not null)
            Lines[0].Begin(Texts([step]).Single());
        Lines[0].Offer("role", "developer");
        Lines[0].Offer("use", "one-shot");
        if (process is not null)
            Lines[0]["step"].Begin(Scaled.ToText(step?.Number ?? number, 0));
        OfferAll();
    }

    protected override string About => $"{base.About} {_step?.Number}".Trim();

    public override string Title => _step is null ? "New step" : $"Step {_step.Number}";

    public override IReadOnlyList<string> Purpose =>
    [
        "A step of a process: presoak, developer, stop, fixer, wash aid, wash, final rinse, or a supply that is used "
            + "up.",
        "A step with a bath that is used again is \"reused\"; any other uses up its amount, "
        + "or what its dilution asks for, each session, batch, sheet or litre.",
        "Another number moves the step. Saving makes a new version of the process; sessions of the past keep theirs.",
    ];

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows
    {
        get
        {
            var step = Lines[0];
            return
            [
                [this["process"], step["step"], step["role"]], [step["item"], step["dilution"], step["amount"]],
                [step["working_ml"], step["working_ml_by_format"]], [step["use"], step["per"]],
                [step["minutes"], step["temperature_c"]], [step["note"]], .. FromDayRow,
            ];
        }
    }

    public override FormField First => this["process"].IsEmpty ? this["process"] : Lines[0]["role"];

    /// <summary>Where nothing else is said, a step goes to the end of the process that is named.</summary>
    protected override void OfferAll()
    {
        base.OfferAll();
        if (!Lines[0]["step"].IsGiven)
            Lines[0].Offer("step",
                Scaled.ToText((Holdings.Process(this["process"].Text.Trim())?.Steps.Count ?? 0) + 1, 0));
    }

    protected override IReadOnlyList<EntryText> Steps(EntryText written)
    {
        var known = Holdings.Process(this["process"].Text.Trim())?.Steps ?? [];
        var others = Texts(known.Where(step => step != _step)).ToList();
        var place = Lines[0]["step"].Figure is >= 1 and <= 1000 and var number && number == decimal.Truncate(number)
            ? (int)number
            : others.Count + 1;
        others.Insert(Math.Min(place - 1, others.Count), written);
        return others;
    }
}
