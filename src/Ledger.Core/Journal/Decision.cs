namespace Ledger.Core.Journal;

/// <summary>What the rules decided.</summary>
public abstract record Decision;

/// <summary>The entry can be written.</summary>
/// <param name="Posting">What it would write.</param>
public sealed record Accepted(Posting Posting) : Decision;

/// <summary>The entry is refused.</summary>
/// <param name="Refusal">Why.</param>
public sealed record Refused(Refusal Refusal) : Decision;
