using Ledger.Core.Baths;
using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Notices;

/// <summary>What could be developed today with a process and one of its baths.</summary>
/// <param name="Process">The process.</param>
/// <param name="Developer">The developer's code; null when the process has none.</param>
/// <param name="DeveloperLeft">The developer that is still good.</param>
/// <param name="Batches">For how many trays it suffices; null when the process does not say how much a tray takes.</param>
/// <param name="Bath">The bath that counts the work; null when the process needs none or none is in use.</param>
/// <param name="RoomInBath">The area the bath can still take; none when it is exhausted or expired, null without a capacity.</param>
public sealed record Prospect(string Process, string? Developer, Quantity? DeveloperLeft, long? Batches, string? Bath, Area? RoomInBath)
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
                process.Name, developer?.Code, left, BatchesFrom(step, developer, left), bath?.Code,
                reading is { IsUnusable: true } ? Area.Zero : reading?.Remaining);
        }
    }

    /// <summary>For how many batches of which process a developer suffices: "2 batches of film"; empty where no process says so.</summary>
    public static string BatchesOf(Item developer, Holdings holdings) => string.Join(" or ", Of(holdings)
        .Where(prospect => prospect.Developer == developer.Code && prospect.Batches is not null)
        .Select(prospect => $"{Counted.Of(prospect.Batches ?? 0, "batch")} of {prospect.Process}"));

    private static long? BatchesFrom(ProcessStep? step, Item? developer, Quantity? left)
    {
        if (step is null || developer is null || left is not { Unit: Unit.Millilitre } liquid)
            return null;
        var each = step.Amount?.Base
            ?? (step.WorkingVolume is { } volume ? (step.Dilution ?? developer.Dilution)?.SourceIn(volume).Microlitres : null);
        return each is > 0 ? liquid.Base / each.Value : null;
    }
}
