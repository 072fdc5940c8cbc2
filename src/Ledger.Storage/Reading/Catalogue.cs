namespace Ledger.Storage.Reading;

/// <summary>
/// The items and holders of a file that holdings look up when they are asked for them: in the state that the reading
/// holds, which is that of the holdings. Holdings that are kept longer than their reading, as by a screen until its
/// next refresh, look them up as they stand then.
/// </summary>
/// <param name="reading">Reads in the state that is held, or else in the state of now.</param>
/// <param name="asOf">The day that the holdings stand for.</param>
internal sealed class Catalogue(IReading reading, LocalDate asOf) : IItemCatalogue, IHolderCatalogue
{
    private ILookup<long, SideFault>? _faults;

    public FormatTable Formats { get; } = new();

    public long LastItem => reading.In(NewestItem);

    public long LastHolder => reading.In(NewestHolder);

    public CataloguedItem? Item(string code) =>
        reading.In(snapshot => IsFolded(code) ? new ItemReader(snapshot, Formats).Find(code)
            : new ItemReader(snapshot, Formats).All().FirstOrDefault(item => IsSame(item.Item.Code, code)));

    public IReadOnlyList<CataloguedItem> Items(ItemKind? kind) => reading.In(snapshot =>
        kind is { } one ? new ItemReader(snapshot, Formats).Of(one) : new ItemReader(snapshot, Formats).All());

    public IReadOnlyList<ItemName> Names() =>
        reading.In(snapshot => new ItemReader(snapshot, Formats).Names());

    /// <summary>The holders with something in the sides at those places, and those that have spoiled a sheet.</summary>
    public IReadOnlyList<Holder> HoldersInUse(IEnumerable<long> places) =>
        reading.In(snapshot => Holders(snapshot).WithSides(places.Union(Faults(snapshot).Select(side => side.Key)),
            Faults(snapshot)));

    public Holder? Holder(string code) =>
        reading.In(snapshot => IsFolded(code) ? Holders(snapshot).Find(code, Faults(snapshot))
            : Holders(snapshot).All(Faults(snapshot)).FirstOrDefault(holder => IsSame(holder.Code, code)));

    public Holder? HolderOf(string side) =>
        reading.In(snapshot => IsFolded(side) ? Holders(snapshot).WithSide(side, Faults(snapshot))
            : Holders(snapshot).All(Faults(snapshot))
                .FirstOrDefault(holder => holder.Sides.Any(one => IsSame(one.Code, side))));

    public Holder? HolderOf(PlaceId side) =>
        reading.In(snapshot => Holders(snapshot).WithSide(side.Value, Faults(snapshot)));

    IReadOnlyList<HolderName> IHolderCatalogue.Names() => reading.In(snapshot => Holders(snapshot).Names());

    IReadOnlyList<Holder> IHolderCatalogue.All() => reading.In(snapshot => Holders(snapshot).All(Faults(snapshot)));

    private static long NewestItem(Snapshot snapshot) =>
        snapshot.Connection.ExecuteScalar<long>("SELECT coalesce(max(id), 0) FROM item");

    private static long NewestHolder(Snapshot snapshot) =>
        snapshot.Connection.ExecuteScalar<long>("SELECT coalesce(max(id), 0) FROM holder");

    private HolderReader Holders(Snapshot snapshot) => new(snapshot, Formats, asOf);

    /// <summary>
    /// Read once: the holdings that look holders up count what is spoiled after that themselves, and a holder that is
    /// looked up after an entry was written must not count it twice.
    /// </summary>
    private ILookup<long, SideFault> Faults(Snapshot snapshot) => _faults ??= Holders(snapshot).Faults();

    /// <summary>SQLite tells upper and lower case apart beyond ASCII, and people do not.</summary>
    private static bool IsFolded(string name) => System.Text.Ascii.IsValid(name);

    private static bool IsSame(string name, string other) => name.Equals(other, StringComparison.OrdinalIgnoreCase);
}
