using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Entries;

/// <summary>A film holder, for a new one or in place of what was written of it.</summary>
public sealed record HolderDefinition : Definition
{
    /// <summary>The name on it, such as E07.</summary>
    public required string Holder { get; init; }

    /// <summary>The film it takes.</summary>
    public required Format Format { get; init; }

    /// <summary>The names of its sides; none for those of the setting side-names.</summary>
    public IReadOnlyList<string> Sides { get; init; } = [];

    /// <summary>The notches filed into its flap; may be empty.</summary>
    public string Notch { get; init; } = "";

    /// <summary>The day it was bought.</summary>
    public LocalDate? BoughtOn { get; init; }

    /// <inheritdoc/>
    public override string Kind => "holder";
}
