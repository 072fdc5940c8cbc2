using Ledger.Core.Journal;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>The last session of a process: the measure of what another one asks for.</summary>
/// <param name="Session">Its name.</param>
/// <param name="Process">The process.</param>
/// <param name="Developer">The developer it used.</param>
/// <param name="Fixed">The area of its film, weighted by the fixer factors.</param>
/// <param name="Batches">In how many batches; 0 where that is not known.</param>
public sealed record SessionSize(string Session, string Process, Volume Developer, Area Fixed, int Batches)
{
    private const int SessionsRead = 20;

    /// <summary>The last session of each process, among the last sessions of the ledger.</summary>
    public static IReadOnlyList<SessionSize> Of(ILedger ledger, Holdings holdings) =>
    [
        .. ledger.Sessions(holdings.AsOf, null, SessionsRead).GroupBy(session => session.Process,
            StringComparer.OrdinalIgnoreCase)
            .Select(sessions => sessions.First()).Select(last => new SessionSize(
                last.Session, last.Process, last.Developer,
                last.Lines.Aggregate(Area.Zero, (sum, line) => sum
                    + line.Area.Weighted(holdings.Item(line.Item)?.FixerFactorThousandths ?? 1000)),
                ledger.SheetsOf(last.Session, holdings.AsOf).Select(sheet => sheet.Batch).Distinct().Count())),
    ];
}

/// <summary>
/// For how many batches and sessions what can be used of a developer or fixer is enough: of a developer by what a batch
/// takes, of a fixer by how many fresh baths it makes and what each of them can fix. Nothing is rounded up.
/// </summary>
/// <param name="Process">The process.</param>
/// <param name="Baths">How many fresh baths it makes; null for what is used once.</param>
/// <param name="Batches">How many batches; null where that is not known.</param>
/// <param name="Sessions">How many sessions like the last one; null where none was held or nothing is known of
/// it.</param>
/// <param name="Like">The last session of the process.</param>
public sealed record EnoughFor(string Process, long? Baths, long? Batches, long? Sessions, string? Like)
{
    /// <summary>What an amount is enough for, by each process that uses the item.</summary>
    /// <param name="item">The developer or fixer.</param>
    /// <param name="usable">What can be used of it.</param>
    /// <param name="holdings">What the ledger holds.</param>
    /// <param name="sizes">The last sessions; none where only batches are asked for.</param>
    public static IReadOnlyList<EnoughFor> Of(Item item, Quantity usable, Holdings holdings,
        IReadOnlyList<SessionSize> sizes) =>
    [
        .. holdings.Processes.Select(process => Of(process, item, usable, Last(process, sizes))).OfType<EnoughFor>(),
    ];

    /// <summary>
    /// The same in words: "2 batches of film, 1 session like S22"; empty where no process uses the item.
    /// </summary>
    public static string Text(IReadOnlyList<EnoughFor> enough) =>
        string.Join(" or ", enough.Select(one => one.ToString()));

    /// <inheritdoc/>
    public override string ToString() => string.Join(", ", new[]
    {
        Baths is { } baths ? $"{Counted.Of(baths, "fresh bath")} of {Process}" : null,
        Batches is { } batches ? Counted.Of(batches, "batch") + (Baths is null ? $" of {Process}" : "") : null,
        Sessions is { } sessions ? $"{Counted.Of(sessions, "session")} like {Like}" : null,
    }.OfType<string>());

    private static SessionSize? Last(Process process, IReadOnlyList<SessionSize> sizes) =>
        sizes.FirstOrDefault(size => size.Process.Equals(process.Name, StringComparison.OrdinalIgnoreCase));

    private static EnoughFor? Of(Process process, Item item, Quantity usable, SessionSize? last)
    {
        if (process.Developer is { Use: StepUse.OneShot } developer && IsOf(developer, item))
            return Each(developer, item) is not { Base: > 0 } each || each.Unit != usable.Unit ? null : new(
                process.Name, null, usable.Base / each.Base,
                last is { Developer.Microlitres: > 0 } && usable.Unit == Unit.Millilitre
                    ? usable.Base / last.Developer.Microlitres
                    : null,
                last?.Session);
        if (process.Reused.FirstOrDefault(step => step.Role == ItemRole.Fixer && IsOf(step, item))
            is not { WorkingVolume: { } volume } step || Each(step, item) is not { Base: > 0 } concentrate
                || concentrate.Unit != usable.Unit)
            return null;
        var baths = usable.Base / concentrate.Base;
        return new(
            process.Name, baths, Times(item.Capacity?.Of(volume),
                last is { Batches: > 0 } ? last.Fixed.Hundredths / last.Batches : null, baths),
            Times(item.Capacity?.Of(volume), last?.Fixed.Hundredths, baths), last?.Session);
    }

    private static bool IsOf(ProcessStep step, Item item) =>
        item.Code.Equals(step.Item, StringComparison.OrdinalIgnoreCase);

    private static Quantity? Each(ProcessStep step, Item item) =>
        (step with { UsualDilution = item.Dilution }).AmountEach;

    /// <summary>So many baths of a capacity, each for as many whole areas as fit into it.</summary>
    private static long? Times(Area? capacity, long? area, long baths) =>
        capacity is { } whole && area is > 0 and { } each ? baths * (whole.Hundredths / each) : null;
}
