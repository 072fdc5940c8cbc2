using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A form that begins work on the file.</summary>
internal abstract class WorkForm : Form
{
    public override string SaveLabel => "Start";

    public override bool IsTouched => false;

    public override Verdict Judge()
    {
        var problems = Fields.Where(field => Problem(field) is not null)
            .Select(field => $"{field.Label}: {Problem(field)}").ToList();
        return problems.Count > 0 ? new Incomplete(problems) : new Startable(Work(), Promise);
    }

    public override Saving Save() => Judge() switch
    {
        Startable ready => new(true, 0, "") { Next = new WorkStep(ready.Work) },
        Incomplete incomplete => Saving.Not(ScreenText.Sentence(incomplete.Problems[0])),
        _ => Saving.Not("Nothing was started."),
    };

    /// <summary>What it will do, in a sentence.</summary>
    protected abstract string Promise { get; }

    /// <summary>Makes the work from the fields, which were found right.</summary>
    protected abstract Work Work();

    /// <summary>
    /// What is wrong with a field, as everywhere: what was found and what is accepted; null for nothing.
    /// </summary>
    private static string? Problem(FormField field) => field.Kind switch
    {
        FieldKind.Tick => null,
        FieldKind.Choice => field.Choices().Contains(field.Text.Trim(), StringComparer.OrdinalIgnoreCase) ? null
            : $"found {(field.IsEmpty ? "nothing" : $"\"{field.Text.Trim()}\"")}; accepted is "
                + $"{string.Join(", ", field.Choices())}",
        _ => field.IsEmpty ? "found nothing; accepted is the name of a file or folder" : null,
    };
}

/// <summary>The work can begin.</summary>
/// <param name="Work">The work.</param>
/// <param name="Promise">What it will do.</param>
internal sealed record Startable(Work Work, string Promise) : Verdict
{
    public override IReadOnlyList<Block> Blocks => [Block.Of("When you start it", $"  {Promise}")];
}
