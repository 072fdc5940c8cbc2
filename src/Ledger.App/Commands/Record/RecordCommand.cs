using System.CommandLine;
using Ledger.App.Values;
using Ledger.App.Wiring;
using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Storage;
using NodaTime;

namespace Ledger.App.Commands.Record;

/// <summary>Records one kind of entry: reads it from the command line, posts it, and shows what it changed.</summary>
internal abstract class RecordCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Option<LocalDate?> _date = Typed.Option(
        "--date", "DATE", Text.Date, "the day it happened, such as 2026-03-15; otherwise today");

    private readonly Option<string?> _note = new("--note") { HelpName = "TEXT", Description = "a note of your own" };
    private readonly Option<string?> _reference = Typed.Option<string?>(
        "--reference", "TEXT", Text.NotEmpty, "your own name for the entry: sending it again under the same one adds nothing");

    private readonly Option<bool> _dryRun = new("--dry-run") { Description = "show what it would change, and write nothing" };

    protected RecordCommand(Workbench bench, string name, string summary, string details, bool hasDate = true)
        : base(name, summary, details)
    {
        _bench = bench;
        if (hasDate)
            Options.Add(_date);
        Options.Add(_note);
        Options.Add(_reference);
        Options.Add(_dryRun);
        SetAction(Run);
    }

    /// <summary>Reads the entry.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="frame">What every entry has.</param>
    /// <param name="holdings">
    /// What the ledger knows today, for the units of its items: an entry may be dated before its item was defined.
    /// </param>
    protected abstract Entry Read(ParseResult parse, EntryFrame frame, Holdings holdings);

    /// <summary>Puts the entry's own options before the common ones, where its help reads best.</summary>
    protected void AddOwn(params ReadOnlySpan<Option> options)
    {
        for (var i = 0; i < options.Length; i++)
            Options.Insert(i, options[i]);
    }

    protected static Option<bool> BookDifference() => new("--book-difference")
    {
        Description = "where more is used than the book holds, book the difference as found by a count",
    };

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.Open(parse);
        var frame = new EntryFrame(
            parse.GetValue(_reference)?.Trim(),
            parse.GetValue(_date) ?? ledger.Today,
            parse.GetValue(_note) ?? "");
        var entry = Read(parse, frame, ledger.HoldingsOn(ledger.Today));
        return parse.GetValue(_dryRun) ? Preview(ledger, entry) : Post(ledger, entry);
    }

    private int Preview(LedgerFile ledger, Entry entry)
    {
        switch (ledger.Preview(entry))
        {
            case Accepted accepted:
                PostingText.Write("would be recorded", accepted.Posting, _bench.Around);
                _bench.Say("nothing was written: this was a dry run");
                return ExitStatus.Done;
            case Refused refused:
                return Refuse(refused.Refusal);
            case var other:
                throw new InvalidOperationException($"the rules answered with {other}");
        }
    }

    private int Post(LedgerFile ledger, Entry entry)
    {
        switch (ledger.Post(entry))
        {
            case Posted posted:
                _bench.Written = $"entry {posted.Number} is recorded";
                PostingText.Write($"entry {posted.Number}", posted.Posting, _bench.Around);
                return ExitStatus.Done;
            case AlreadyPosted already:
                _bench.Say($"entry {already.Number} stands in the journal under this reference already; nothing was written");
                return ExitStatus.Done;
            case NotPosted refused:
                return Refuse(refused.Refusal);
            case var other:
                throw new InvalidOperationException($"the ledger answered with {other}");
        }
    }

    private int Refuse(Refusal refusal)
    {
        _bench.Say(refusal.Sentence);
        return ExitStatus.Refused;
    }
}

/// <summary>What every entry has.</summary>
/// <param name="Reference">The caller's name for it, if there is one.</param>
/// <param name="Date">The day it happened.</param>
/// <param name="Note">The user's note.</param>
internal sealed record EntryFrame(string? Reference, LocalDate Date, string Note)
{
    /// <summary>The reference, else a key of its own.</summary>
    public string Key { get; } = Reference ?? Guid.CreateVersion7().ToString();
}
