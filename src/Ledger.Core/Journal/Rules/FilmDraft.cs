using Ledger.Core.Film;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// The holders and sheets of a posting while the rules put it together. A sheet that was taken once is not there a
/// second time.
/// </summary>
internal sealed class FilmDraft(Draft draft)
{
    private readonly HashSet<SheetId> _taken = [];
    private readonly Dictionary<string, (string Before, string After)> _sides = [];
    private readonly Dictionary<PlaceId, (ExposedBox Box, int Change)> _boxes = [];
    private long _lastSheet;
    private long _lastNegative;

    public FilmRegister Register => draft.Holdings.Film;

    /// <summary>A sheet that was not known before.</summary>
    /// <param name="slot">What tells it from the entry's other new sheets: its line and place there, the side it went
    /// into.</param>
    public SheetId NewSheet(string slot)
    {
        var number = draft.Name($"sheet {slot}", GivenName.Sheets, Math.Max(Register.LastSheet, _lastSheet) + 1);
        _lastSheet = Math.Max(_lastSheet, number);
        return new(number);
    }

    /// <summary>The next number of the user's pattern.</summary>
    public NegativeNumber NextNegative(SheetId sheet)
    {
        var (pattern, year) = (draft.Holdings.Settings.Film.Negatives, draft.Date.Year);
        var last = Math.Max(Register.LastNegative(pattern.HasYear ? year : 0), _lastNegative);
        var running = draft.Name($"negative {sheet} {year}", GivenName.Negatives(year), last + 1);
        _lastNegative = Math.Max(last, running);
        return new(pattern.Number(year, running), year, running);
    }

    /// <summary>The sides that are named, one by one or by their holder.</summary>
    public IReadOnlyList<HolderSide> Sides(IEnumerable<string> names)
    {
        var sides = names.SelectMany(SidesOf).ToList();
        Require.That(sides.Count > 0, "name at least one side of a holder, such as E07-2");
        if (sides.GroupBy(side => side.Place).FirstOrDefault(group => group.Count() > 1) is { } twice)
            Require.That(false, $"{twice.First().Code} is named twice; name it once");
        return sides;
    }

    /// <summary>The sheet in a side.</summary>
    public Sheet In(HolderSide side) => Register.In(side) is { } sheet && !_taken.Contains(sheet.Id)
        ? sheet
        : throw new RefusedException(RefusalKind.Empty, $"{side.Code} is empty; load it first, or name another side");

    /// <summary>
    /// All sheets of what is named: sides, boxes of exposed sheets, sheets by number; null when the name is none of
    /// them.
    /// </summary>
    public IReadOnlyList<Sheet>? Find(string name)
    {
        if (SheetId.Parse(name.Trim()) is { } id)
            return [Register.Sheet(id) is { } sheet && !_taken.Contains(id) ? sheet : throw new RefusedException(
                RefusalKind.Unknown, $"there is no sheet {id} in a holder or a box of exposed sheets")];
        if (Register.Side(name) is { } side)
            return [In(side)];
        if (Register.Holder(name) is { } holder)
            return [.. holder.Sides.Select(Register.In).OfType<Sheet>().Where(IsThere)];
        return Register.ExposedBox(name) is { } box ? [.. Register.At(box.Place).Where(IsThere)] : null;
    }

    /// <summary>
    /// So many sheets of a film from what is named; a side also stands for its sheet that waits in a box of exposed
    /// sheets.
    /// </summary>
    public IReadOnlyList<Sheet> Draw(string from, Item film, int count)
    {
        var (named, boxed) = (new List<Sheet>(), new List<Sheet>());
        foreach (var name in from.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            (Register.ExposedBox(name) is null ? named : boxed).AddRange(FindForSession(name));
        Require.That(
            named.Count <= count, $"{from} names {Counted.Of(named.Count, "sheet")}, and the line says {count}");
        Require.That(named.DistinctBy(sheet => sheet.Id).Count() == named.Count,
            $"{from} names a sheet twice; name each once");
        if (named.Concat(boxed).FirstOrDefault(sheet => !IsOf(sheet, film)) is { } other)
            Require.That(false, $"{Whereabouts(other)} holds {other.Item}, not {film.Code}");
        var sheets = named.Concat(boxed.Where(sheet => !named.Contains(sheet))).Take(count).ToList();
        return sheets.Count == count ? sheets : throw new RefusedException(
            RefusalKind.MoreThanHeld,
            $"{from} holds {Counted.Of(sheets.Count, "sheet")} of {film.Code}, and {count} are wanted; take at most "
                + "those");
    }

    /// <summary>Moves a sheet on.</summary>
    public void Move(Sheet sheet, PlaceId to)
    {
        Require.That(
            draft.Date >= sheet.LastDay,
            $"the sheet in {Whereabouts(sheet)} came there or was exposed on {Dates.Text(sheet.LastDay)}, after "
            + $"{Dates.Text(draft.Date)}; date the entry then or later");
        _taken.Add(sheet.Id);
        draft.Add(new Movement(sheet.Lot.Id, sheet.At, to, 1, sheet.Cost));
        draft.Add(new SheetMoved(sheet, to));
        if (Register.Side(sheet.At) is { } side)
            Show(side, State(sheet), "empty");
        Count(sheet.At, -1);
        Count(to, +1);
    }

    /// <summary>The box for a film's exposed sheets of a group; it is put up when there is none.</summary>
    public ExposedBox BoxFor(string item, string group)
    {
        var code = ExposedBox.CodeOf(item, group);
        var known = Register.ExposedBox(code)
            ?? _boxes.Values.Select(entry => entry.Box).FirstOrDefault(box => box.Code == code);
        if (known is not null)
            return known;
        var box = new ExposedBox(draft.NewPlace(), item, group);
        draft.Add(new ExposedBoxStarted(box));
        _boxes[box.Place] = (box, 0);
        return box;
    }

    /// <summary>Shows what becomes of a side.</summary>
    public void Show(HolderSide side, string before, string after) => _sides[side.Code] = (before, after);

    /// <summary>A box that is emptied loses its label.</summary>
    public void RemindOfLabels()
    {
        foreach (var (box, change) in _boxes.Values.Where(entry => entry.Change < 0))
            if (Register.At(box.Place).Count() + change == 0)
                draft.Remark($"the box of exposed sheets \"{box.Code}\" is empty now: take off its paper label");
    }

    public IEnumerable<Effect> Effects() =>
    [
        .. _sides.Select(side => new Effect(side.Key, side.Value.Before, side.Value.After)),
        .. _boxes.Values.Where(entry => entry.Change != 0).Select(entry =>
        {
            var before = Register.At(entry.Box.Place).Count();
            return new Effect(entry.Box.Code, Counted.Of(before, "sheet"), Counted.Of(before + entry.Change, "sheet"));
        }),
    ];

    /// <summary>Where a sheet is, in the user's names.</summary>
    /// <summary>
    /// The exposed sheets of a film for a group that are neither developed nor taken by this entry, the longest waiting
    /// first.
    /// </summary>
    public IEnumerable<Sheet> Waiting(string film, string group) => Register.Sheets.Where(sheet =>
        sheet.Exposure is { } exposure && sheet.Item.Equals(film, StringComparison.OrdinalIgnoreCase)
        && exposure.Group.Equals(group, StringComparison.OrdinalIgnoreCase) && exposure.Date <= draft.Date
        && !_taken.Contains(sheet.Id));

    public string Whereabouts(Sheet sheet) =>
        Register.Side(sheet.At)?.Code ?? Register.ExposedBox(sheet.At)?.Code ?? sheet.Id.ToString();

    public static string State(Sheet sheet) =>
        sheet.Exposure is { } exposure ? $"{sheet.Item}, exposed {exposure.Group}" : sheet.Item;

    /// <summary>A group's name; the usual one when none is written.</summary>
    public static string Group(string group)
    {
        var trimmed = group.Trim();
        Require.That(trimmed.Length <= 20 && !trimmed.Any(c => char.IsControl(c) || c == ','),
            "a group is a short name, such as N or N+1");
        return trimmed.Length == 0 ? Exposure.Normal : trimmed;
    }

    private IEnumerable<HolderSide> SidesOf(string name)
    {
        if (Register.Side(name) is { } side)
            return [side];
        return Register.Holder(name)?.Sides ?? throw new RefusedException(
            RefusalKind.Unknown,
            Register.LastHolder == 0
                ? $"there is no holder side \"{name}\"; record the holder first"
                : $"there is no holder side \"{name}\"; known holders: "
                    + string.Join(", ", Register.Names.Take(12).Select(holder => holder.Code)));
    }

    private IReadOnlyList<Sheet> FindForSession(string name)
    {
        if (Register.Side(name) is { } side && Register.In(side) is null && Register.LastOutOf(side) is { } sheet
            && IsThere(sheet))
            return [sheet];
        return Find(name) ?? throw new RefusedException(
            RefusalKind.Unknown,
            $"there is no holder side or box of exposed sheets \"{name}\"; `show holders` lists them");
    }

    private bool IsThere(Sheet sheet) => !_taken.Contains(sheet.Id);

    private static bool IsOf(Sheet sheet, Item film) =>
        sheet.Item.Equals(film.Code, StringComparison.OrdinalIgnoreCase);

    private void Count(PlaceId place, int change)
    {
        if (Register.ExposedBox(place) is { } box)
            _boxes[place] = (box, _boxes.GetValueOrDefault(place).Change + change);
        else if (_boxes.TryGetValue(place, out var known))
            _boxes[place] = known with { Change = known.Change + change };
    }
}
