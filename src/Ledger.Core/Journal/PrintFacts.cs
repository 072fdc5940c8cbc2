using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal;

/// <summary>A print session was held.</summary>
/// <param name="Session">Its name.</param>
/// <param name="Bath">The fixer, if any.</param>
public sealed record PrintSessionHeld(string Session, PlaceId? Bath) : PostedFact;

/// <summary>A negative was printed in the session.</summary>
/// <param name="Position">Its place among those that the session names, counting from 1.</param>
/// <param name="Sheet">The negative's sheet.</param>
public sealed record NegativePrinted(int Position, SheetId Sheet) : PostedFact;

/// <summary>Paper was printed on.</summary>
/// <param name="Line">The position in the session, counting from 1.</param>
/// <param name="Item">The paper's code.</param>
/// <param name="Sheets">The sheets that left the box.</param>
/// <param name="Strips">The strips that went through the baths.</param>
/// <param name="Area">The area that went through the baths.</param>
/// <param name="Cost">What the sheets cost.</param>
/// <param name="Purpose">What they were for.</param>
/// <param name="Note">The user's note.</param>
public sealed record PaperPrinted(
    int Line, string Item, long Sheets, int Strips, Area Area, Money Cost, PrintPurpose Purpose,
    string Note) : PostedFact;
