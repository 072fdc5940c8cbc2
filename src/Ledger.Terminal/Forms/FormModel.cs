using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A form that records an entry.</summary>
/// <param name="ledger">The ledger.</param>
internal abstract class FormModel(ILedger ledger) : Form
{
    private bool _isSaved;

    /// <summary>The entry's key, made when the form opens: saving twice writes once.</summary>
    protected string EntryKey { get; set; } = Guid.CreateVersion7().ToString();

    /// <summary>The ledger.</summary>
    protected ILedger Ledger => ledger;

    public override Verdict Judge() => ledger.Read(() => Judged(isTyping: false))!;

    public override Verdict? JudgeAtOnce() => ledger.Read(() => Judged(isTyping: true));

    public override Saving Save()
    {
        try
        {
            var problems = new List<string>();
            return ledger.Read(() => Read(problems)) is { } entry ? Done(Outcome(ledger.Post(entry)))
                : Saving.Not(ScreenText.Sentence(problems[0]));
        }
        catch (LedgerUnavailableException trouble)
        {
            return Saving.Not(ScreenText.Sentence(trouble.Message));
        }
    }

    public override bool Park()
    {
        if (ParkedAs is not { } name || _isSaved)
            return base.Park();
        try
        {
            if (IsTouched || ledger.Draft(name) is not null)
                ledger.Keep(name, IsTouched ? Content() : null);
            return true;
        }
        catch (LedgerUnavailableException)
        {
            return !IsTouched;
        }
    }

    /// <summary>What was typed is in the journal, and nothing is kept of it.</summary>
    private Saving Done(Saving saving)
    {
        _isSaved = saving.IsDone;
        if (_isSaved && ParkedAs is { } name && ledger.Draft(name) is not null)
            ledger.Keep(name, null);
        return saving;
    }

    /// <summary>
    /// What the form shows of what would be written beside the shelf before and after; nothing for most forms.
    /// </summary>
    protected virtual IReadOnlyList<Block> More(Posting posting) => [];

    /// <summary>Makes the entry from the fields, or says what could not be read of them.</summary>
    protected abstract Entry? Read(ICollection<string> problems);

    /// <param name="isTyping">Whether what takes long is left for later; nothing is said of it then.</param>
    private Verdict? Judged(bool isTyping)
    {
        var problems = new List<string>();
        if (Read(problems) is not { } entry)
            return new Incomplete(problems);
        try
        {
            return isTyping && ledger.ChangesThePast(entry) ? null : ledger.Preview(entry) switch
            {
                Accepted accepted => new Ready(entry, accepted.Posting) { More = More(accepted.Posting) },
                Refused refused => new Rejected(refused.Refusal),
                _ => throw new InvalidOperationException("a decision is neither for nor against"),
            };
        }
        catch (LedgerUnavailableException trouble)
        {
            return new Incomplete([trouble.Message]);
        }
    }

    private static Saving Outcome(PostOutcome outcome) => outcome switch
    {
        Posted posted => new(true, posted.Number, $"Entry {posted.Number}: {posted.Posting.Summary}.")
        {
            Entry = posted.Posting.Entry,
        },
        AlreadyPosted already => new(true, already.Number, $"It is in the journal already, as entry {already.Number}."),
        NotPosted refused => Saving.Not(RefusalText.Of(refused.Refusal)),
        _ => Saving.Not("Nothing was written."),
    };
}
