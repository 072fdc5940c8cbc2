using Ledger.Core.Stock;

namespace Ledger.Core.Film;

/// <summary>
/// The holders, the boxes of exposed sheets, and every sheet that is in one of them. A holder in which nothing is may
/// still stand in the catalogue alone; it is looked up there when it is asked for, and known from then on.
/// </summary>
public sealed class FilmRegister
{
    private readonly Dictionary<string, Holder> _holders = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, (string Holder, int Index)> _sides = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<PlaceId, string> _sideCodes = [];
    private readonly Dictionary<PlaceId, ExposedBox> _boxes = [];
    private readonly Dictionary<SheetId, Sheet> _sheets = [];
    private readonly Dictionary<PlaceId, HashSet<SheetId>> _sheetsAt = [];
    private readonly Dictionary<int, long> _lastNegative = [];
    private IHolderCatalogue? _others;
    private IReadOnlyList<HolderName>? _names;

    /// <summary>An empty register.</summary>
    /// <param name="others">Where the holders are that were not put in; null where there are no others.</param>
    public FilmRegister(IHolderCatalogue? others = null) => (_others, LastHolder) = (others, others?.LastHolder ?? 0);

    /// <summary>The highest number of a sheet so far.</summary>
    public long LastSheet { get; set; }

    /// <summary>The highest number of a holder so far.</summary>
    public long LastHolder { get; private set; }

    /// <summary>All holders by name: every one is looked up for that.</summary>
    public IEnumerable<Holder> Holders
    {
        get
        {
            foreach (var other in _others?.All() ?? [])
                _ = Known(other);
            _others = null;
            return Sorted(_holders.Values);
        }
    }

    /// <summary>The names of all holders, in the order of <see cref="Holders"/>; none is looked up for that.</summary>
    public IReadOnlyList<HolderName> Names => _names ??=
    [
        .. (_others?.Names() ?? [.. _holders.Values.Select(holder => new HolderName(holder.Code, holder.Format.Code))])
            .OrderBy(holder => holder.Code, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>
    /// The holders that need to be looked at, by name: no other holds a sheet or has spoiled one. Some may be among
    /// them that do neither.
    /// </summary>
    public IEnumerable<Holder> HoldersInUse => Sorted(_holders.Values);

    /// <summary>All sheets in holders and boxes of exposed sheets, the first loaded first.</summary>
    public IEnumerable<Sheet> Sheets => _sheets.Values.OrderBy(sheet => sheet.Id.Value);

    /// <summary>The boxes that hold exposed sheets now.</summary>
    public IEnumerable<ExposedBox> ExposedBoxes => _boxes.Values
        .Where(box => At(box.Place).Any())
        .OrderBy(box => box.Item, StringComparer.OrdinalIgnoreCase)
        .ThenBy(box => box.Group, StringComparer.OrdinalIgnoreCase);

    /// <summary>The holder of that name, or null.</summary>
    public Holder? Holder(string code) =>
        _holders.GetValueOrDefault(code.Trim()) ?? Known(_others?.Holder(code.Trim()));

    /// <summary>The side of that name, such as E07-2, or null.</summary>
    public HolderSide? Side(string code)
    {
        if (!_sides.ContainsKey(code.Trim()))
            _ = Known(_others?.HolderOf(code.Trim()));
        return _sides.TryGetValue(code.Trim(), out var side) ? _holders[side.Holder].Sides[side.Index] : null;
    }

    /// <summary>The side at that place, or null.</summary>
    public HolderSide? Side(PlaceId place)
    {
        if (!place.IsOnHand)
            return null;
        if (!_sideCodes.ContainsKey(place))
            _ = Known(_others?.HolderOf(place));
        return _sideCodes.TryGetValue(place, out var code) ? Side(code) : null;
    }

    /// <summary>The box for exposed sheets at that place, or null.</summary>
    public ExposedBox? ExposedBox(PlaceId place) => _boxes.GetValueOrDefault(place);

    /// <summary>
    /// The box for exposed sheets whose label says that, empty or not; null when there never was one.
    /// </summary>
    public ExposedBox? ExposedBox(string code) =>
        _boxes.Values.FirstOrDefault(box => box.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The sheet of that number while it is in a holder or a box of exposed sheets, or null.</summary>
    public Sheet? Sheet(SheetId id) => _sheets.GetValueOrDefault(id);

    /// <summary>The sheets at a place, the first that came first.</summary>
    public IEnumerable<Sheet> At(PlaceId place) => _sheetsAt.GetValueOrDefault(place, [])
        .Select(id => _sheets[id]).OrderBy(sheet => sheet.Since).ThenBy(sheet => sheet.Id.Value);

    /// <summary>The sheet in a side, or null.</summary>
    public Sheet? In(HolderSide side) => At(side.Place).FirstOrDefault();

    /// <summary>The exposed sheet that last came out of a side and waits for its development, or null.</summary>
    public Sheet? LastOutOf(HolderSide side) => _sheets.Values
        .Where(sheet => sheet.Side == side.Place && sheet.At != side.Place).OrderBy(sheet => sheet.Id.Value)
        .LastOrDefault();

    /// <summary>
    /// Whether a place is a side of a holder that was put in or looked up, or a box of exposed sheets.
    /// </summary>
    public bool IsKnown(PlaceId place) => _boxes.ContainsKey(place) || _sideCodes.ContainsKey(place);

    /// <summary>Whether a place is a side or a box of exposed sheets.</summary>
    public bool IsPlace(PlaceId place) => _boxes.ContainsKey(place) || Side(place) is not null;

    /// <summary>How a side stands on a day.</summary>
    public SideReading Read(HolderSide side, LocalDate today) => new(side, In(side), today);

    /// <summary>The last running number of a year's negatives; of all negatives for year 0.</summary>
    public long LastNegative(int year) =>
        year == 0 ? _lastNegative.Values.DefaultIfEmpty().Max() : _lastNegative.GetValueOrDefault(year);

    /// <summary>Remembers that a running number was given out; it is never given again.</summary>
    public void Give(int year, long number) =>
        _lastNegative[year] = Math.Max(number, _lastNegative.GetValueOrDefault(year));

    /// <summary>Puts a holder in, or in place of what was known of it.</summary>
    public void Put(Holder holder)
    {
        if (!_holders.ContainsKey(holder.Code))
            _names = null;
        _holders[holder.Code] = holder;
        LastHolder = Math.Max(LastHolder, holder.Id);
        for (var i = 0; i < holder.Sides.Count; i++)
        {
            _sides[holder.Sides[i].Code] = (holder.Code, i);
            _sideCodes[holder.Sides[i].Place] = holder.Sides[i].Code;
        }
    }

    /// <summary>Puts a side in place of what was known of it.</summary>
    public void Put(HolderSide side)
    {
        var holder = _holders[side.Holder];
        Put(holder with { Sides = [.. holder.Sides.Select(known => known.Place == side.Place ? side : known)] });
    }

    /// <summary>Puts a box for exposed sheets in.</summary>
    public void Put(ExposedBox box) => _boxes[box.Place] = box;

    /// <summary>
    /// Puts a sheet in, or in place of what was known of it; it is forgotten when it is at neither a side nor a box.
    /// </summary>
    public void Put(Sheet sheet)
    {
        LastSheet = Math.Max(LastSheet, sheet.Id.Value);
        if (_sheets.Remove(sheet.Id, out var before))
            _sheetsAt[before.At].Remove(sheet.Id);
        if (!IsPlace(sheet.At))
            return;
        _sheets[sheet.Id] = sheet;
        if (!_sheetsAt.TryGetValue(sheet.At, out var there))
            _sheetsAt[sheet.At] = there = [];
        there.Add(sheet.Id);
    }

    /// <summary>Moves a sheet; the side it leaves or comes to remembers the day.</summary>
    public void Move(SheetId id, PlaceId to, LocalDate date)
    {
        if (Sheet(id) is not { } sheet)
            return;
        if (Side(sheet.At) is { } left)
            Put(left with { LastUsedOn = date, LastEmptiedOn = date });
        Put(sheet with { At = to, Since = date });
    }

    /// <summary>A holder that was looked up, unless it is known already: what is known is the newer.</summary>
    private Holder? Known(Holder? found)
    {
        if (found is not null && !_holders.ContainsKey(found.Code))
            Put(found);
        return found is null ? null : _holders[found.Code];
    }

    private static IEnumerable<Holder> Sorted(IEnumerable<Holder> holders) =>
        holders.OrderBy(holder => holder.Code, StringComparer.OrdinalIgnoreCase);
}
