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

    public override Verdict Judge() => ledger.Read(Judged);

    public override Saving Save()
    {
        try
        {
            return Judge() switch
            {
                Ready ready => Done(Outcome(ledger.Post(ready.Entry))),
                Rejected rejected => Saving.Not(RefusalText.Of(rejected.Refusal)),
                Incomplete incomplete => Saving.Not(ScreenText.Sentence(incomplete.Problems[0])),
                _ => Saving.Not("Nothing was written."),
            };
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

    /// <summary>What the form shows of what would be written beside the shelf before and after; nothing for most forms.</summary>
    protected virtual IReadOnlyList<Block> More(Posting posting) => [];

    /// <summary>Makes the entry from the fields, or says what could not be read of them.</summary>
    protected abstract Entry? Read(ICollection<string> problems);

    private Verdict Judged()
    {
        var problems = new List<string>();
        if (Read(problems) is not { } entry)
            return new Incomplete(problems);
        try
        {
            return ledger.Preview(entry) switch
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

    private Saving Outcome(PostOutcome outcome) => outcome switch
    {
        Posted posted => new(true, posted.Number, $"Entry {posted.Number}: {posted.Posting.Summary}.")
        {
            Entry = posted.Posting.Entry, CanBeTakenBack = CanBeTakenBack(posted),
        },
        AlreadyPosted already => new(true, already.Number, $"It is in the journal already, as entry {already.Number}."),
        NotPosted refused => Saving.Not(RefusalText.Of(refused.Refusal)),
        _ => Saving.Not("Nothing was written."),
    };

    /// <summary>Nothing is promised that the rules would refuse: they are asked.</summary>
    private bool CanBeTakenBack(Posted posted) => ledger.Preview(new Undo
    {
        Key = $"{posted.Posting.Entry.Key} back", Date = posted.Posting.Entry.Date, Number = posted.Number, Reason = "-",
    }) is Accepted;
}
