using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Planning;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Notices;

/// <summary>What could be developed today with a process and one of its baths.</summary>
/// <param name="Process">The process.</param>
/// <param name="Developer">The developer's code; null when the process has none.</param>
/// <param name="DeveloperLeft">The developer that is still good.</param>
/// <param name="Batches">For how many trays it suffices; null when the process does not say how much a tray
/// takes.</param>
/// <param name="Bath">The bath that counts the work; null when the process needs none or none is in use.</param>
/// <param name="RoomInBath">The area the bath can still take; none when it is exhausted or expired, null without a
/// capacity.</param>
public sealed record Prospect(string Process, string? Developer, Quantity? DeveloperLeft, long? Batches,
    string? Bath, Area? RoomInBath)
{
    /// <summary>The prospects of every process.</summary>
    public static IEnumerable<Prospect> Of(Holdings holdings)
    {
        foreach (var process in holdings.Processes)
        {
            var step = process.Developer;
            var developer = step?.Item is { } code ? holdings.Item(code) : null;
            Quantity? left = developer is null ? null
                : new ShelfReading(developer, holdings.ContainersOf(developer.Code), holdings.AsOf).Usable;
            var bath = new SessionBaths(holdings, holdings.AsOf).Likely(process);
            var reading = bath is null ? null : new BathReading(bath, holdings.AsOf);
            yield return new(
                process.Name, developer?.Code, left, BatchesFrom(process, developer, left, holdings), bath?.Code,
                reading is { IsUnusable: true } ? Area.Zero : reading?.Remaining);
        }
    }

    private static long? BatchesFrom(Process process, Item? developer, Quantity? left, Holdings holdings) =>
        developer is null || left is not { } usable ? null : EnoughFor.Of(developer, usable, holdings, [])
            .FirstOrDefault(enough => enough.Process == process.Name)?.Batches;
}
