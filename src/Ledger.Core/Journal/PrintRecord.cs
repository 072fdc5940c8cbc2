using Ledger.Core.Measures;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal;

/// <summary>A print session as the journal remembers it.</summary>
/// <param name="Number">The entry's number.</param>
/// <param name="Session">Its name.</param>
/// <param name="Date">Its day.</param>
/// <param name="Bath">The fixer.</param>
/// <param name="Note">The user's note.</param>
/// <param name="Lines">The paper.</param>
public sealed record PrintRecord(
    long Number, string Session, LocalDate Date, string? Bath, string Note, IReadOnlyList<PrintedPaper> Lines)
{
    /// <summary>
    /// The negatives that were printed, by their numbers, in the order they were named; may be empty.
    /// </summary>
    public IReadOnlyList<string> Negatives { get; init; } = [];

    /// <summary>The sheets that left their box, those that were cut up too.</summary>
    public long Sheets => Lines.Sum(line => line.Sheets);

    /// <summary>The area that went through the baths.</summary>
    public Area Area => Lines.Aggregate(Area.Zero, (sum, line) => sum + line.Area);

    /// <summary>What the paper cost.</summary>
    public Money Cost => Lines.Aggregate(Money.Zero, (sum, line) => sum + line.Cost);
}

/// <summary>Paper of one kind and purpose in a print session.</summary>
/// <param name="Item">The paper.</param>
/// <param name="Sheets">The sheets that left the box.</param>
/// <param name="Strips">The strips that went through the baths; 0 when the sheets did whole.</param>
/// <param name="Area">The area that went through the baths.</param>
/// <param name="Cost">What the sheets cost.</param>
/// <param name="Purpose">What they were for.</param>
/// <param name="Note">The user's note.</param>
public sealed record PrintedPaper(string Item, long Sheets, int Strips, Area Area, Money Cost,
    PrintPurpose Purpose, string Note);
