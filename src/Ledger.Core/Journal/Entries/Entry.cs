namespace Ledger.Core.Journal.Entries;

/// <summary>One thing that happened. It is posted once and never changed.</summary>
public abstract record Entry
{
    /// <summary>The caller's own name for the entry: sending it again under the same key adds nothing.</summary>
    public required string Key { get; init; }

    /// <summary>
    /// Keys under which earlier versions of the program, or of its files, posted the same: where the ledger knows one,
    /// the entry is there already. No part of what the entry says.
    /// </summary>
    public IReadOnlyList<string> FormerKeys { get; init; } = [];

    /// <summary>
    /// The places in which it says nothing on purpose, with no value: told again, it denies what stands there. No part
    /// of what the entry says.
    /// </summary>
    public IReadOnlyList<FieldChange> Denies { get; init; } = [];

    /// <summary>The day it happened.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>The user's note; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>
    /// The entry of the same day that it happened before, by its number or its reference; empty for one that comes
    /// after all that were recorded before it.
    /// </summary>
    public string Before { get; init; } = "";

    /// <summary>Whether it is so although it is unlikely: what a rule asks about is answered.</summary>
    public bool Anyway { get; init; }

    /// <summary>
    /// Whether somebody typed its date, in a form or a command, and no file holds it. No part of what the entry says.
    /// </summary>
    public bool IsTyped { get; init; }

    /// <summary>The kind's name in the journal.</summary>
    public abstract string Kind { get; }
}
