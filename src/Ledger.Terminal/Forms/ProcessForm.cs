using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// A form that makes a new version of a process out of steps it has and one that is written; it shows the process as it
/// would be.
/// </summary>
internal abstract class ProcessForm : KindForm
{
    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="begin">What is written in it.</param>
    protected ProcessForm(ILedger ledger, params ReadOnlySpan<(string Field, string? Text)> begin)
        : base(ledger, "process", begin)
    {
    }

    public override IReadOnlyList<FormKey> Keys => [];

    /// <summary>The steps of the process as it would be, in order.</summary>
    /// <param name="written">The step that is written.</param>
    protected abstract IReadOnlyList<EntryText> Steps(EntryText written);

    /// <summary>Steps as they are written.</summary>
    protected IEnumerable<EntryText> Texts(IEnumerable<ProcessStep> steps)
    {
        var process = new ProcessDefinition { Key = EntryKey, Date = Ledger.Today, Process = "", Steps = [.. steps] };
        return EntryWriting.Write(EntryKinds.Of(process), process, Terms).Lines;
    }

    /// <summary>Each step takes the number of its place.</summary>
    protected sealed override EntryText Written()
    {
        var text = base.Written();
        var steps = Steps(Lines[0].Written(_ => true));
        text.Lines.Clear();
        foreach (var step in steps)
        {
            step["step"] = "";
            text.Lines.Add(step);
        }

        return text;
    }

    /// <summary>Only one step stands on the form.</summary>
    protected override string Told(FieldProblem problem) => base.Told(problem with { Line = 0 });

    protected override IReadOnlyList<Block> More(Posting posting) =>
        posting.Entry is not ProcessDefinition definition ? [] :
        [
            ProcessBlocks.Steps("The process then", definition.Steps),
        ];
}
