using Ledger.Terminal.Tables;

namespace Ledger.Terminal.Forms;

/// <summary>A form that begins work on the file.</summary>
internal abstract class WorkForm : Form
{
    /// <inheritdoc/>
    public override string SaveLabel => "Start";

    /// <inheritdoc/>
    public override bool IsTouched => false;

    /// <inheritdoc/>
    public override Verdict Judge()
    {
        var answers = new Answers();
        var work = Read(answers);
        return answers.Problems.Count > 0 ? new Incomplete(answers.Problems) : new Startable(work, Promise);
    }

    /// <inheritdoc/>
    public override Saving Save() => Judge() switch
    {
        Startable ready => new(true, 0, "") { Next = new WorkStep(ready.Work) },
        Incomplete incomplete => Saving.Not(Screens.ScreenText.Sentence(incomplete.Problems[0])),
        _ => Saving.Not("Nothing was begun."),
    };

    /// <summary>What it will do, in a sentence.</summary>
    protected abstract string Promise { get; }

    /// <summary>Makes the work from the fields.</summary>
    protected abstract Work Read(Answers answers);
}

/// <summary>The work can begin.</summary>
/// <param name="Work">The work.</param>
/// <param name="Promise">What it will do.</param>
internal sealed record Startable(Work Work, string Promise) : Verdict
{
    /// <inheritdoc/>
    public override IReadOnlyList<Block> Blocks => [Block.Of("When you start it", $"  {Promise}")];
}
