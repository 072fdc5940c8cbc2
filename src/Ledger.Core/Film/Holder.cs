using Ledger.Core.Measures;

namespace Ledger.Core.Film;

/// <summary>A film holder, most often with two sides.</summary>
public sealed record Holder
{
    /// <summary>Its number, once the ledger has one.</summary>
    public long Id { get; init; }

    /// <summary>The name on it: E07.</summary>
    public required string Code { get; init; }

    /// <summary>The film it takes.</summary>
    public required Format Format { get; init; }

    /// <summary>Its sides in order.</summary>
    public required IReadOnlyList<HolderSide> Sides { get; init; }

    /// <summary>The notches filed into its flap, as the user writes them; may be empty.</summary>
    public string Notch { get; init; } = "";

    /// <summary>The day it was bought.</summary>
    public LocalDate? BoughtOn { get; init; }

    /// <summary>The day it was last cleaned.</summary>
    public LocalDate? CleanedOn { get; init; }

    /// <summary>Whether it was put into a bag after that.</summary>
    public bool IsBagged { get; init; }

    /// <summary>Why it should be cleaned before it is loaded; null when it is clean.</summary>
    public string? CleanBeforeLoad
    {
        get
        {
            if (CleanedOn is not { } cleaned)
                return $"{Code} has no cleaning on record";
            var emptied = Sides.Max(side => side.LastEmptiedOn);
            return emptied is { } day && day > cleaned
                ? $"{Code} was emptied on {Dates.Text(day)} and not cleaned since"
                : null;
        }
    }
}
