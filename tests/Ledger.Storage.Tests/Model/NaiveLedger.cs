namespace Ledger.Storage.Tests.Model;

/// <summary>
/// The ledger as a child would keep it: a list of what was said, and boxes with numbers in them. Whatever is said, all
/// that holds is done once more from the beginning, in the order of days; if any of it cannot be done, nothing is said.
/// It shares no code with the real one.
/// </summary>
internal sealed class NaiveLedger
{
    private readonly List<Said> _said = [];
    private readonly Dictionary<string, long> _lastBox = [];
    private NaiveShelf _shelf = new();

    public int Entries => _said.Count;

    public long OnHand(string item) => _shelf.OnHand(item);

    public long AreaOf(string bath) => _shelf.AreaOf(bath);

    public IEnumerable<(string Code, long Held)> Boxes => _shelf.Boxes;

    /// <summary>Something happens on a day.</summary>
    public bool Say(int day, Func<NaiveShelf, long, bool> act, long amount) =>
        Try(() => _said.Add(new(day, act, amount)));

    /// <summary>Something that was said is taken back, or counts again.</summary>
    public bool Undo(int index) =>
        index < _said.Count && !IsUndone(index) && Try(() => _said.Add(new(0, null, 0) { Undoes = index }));

    /// <summary>The amount of something that was said was another one.</summary>
    public bool Amend(int index, long amount) => index < _said.Count && _said[index].Act is not null && !IsUndone(index)
        && Try(() => _said.Add(new(0, null, amount) { Amends = index }));

    private long AmountOf(int index) =>
        Enumerable.Range(0, _said.Count).Where(by => _said[by].Amends == index && !IsUndone(by))
            .Append(index).Max() is var last && last > index ? _said[last].Amount : _said[index].Amount;

    private bool IsUndone(int index) =>
        Enumerable.Range(0, _said.Count).Any(by => _said[by].Undoes == index && !IsUndone(by));

    private bool Try(Action change)
    {
        var (count, shelf) = (_said.Count, new NaiveShelf());
        change();
        foreach (var index in Enumerable.Range(0, _said.Count)
            .Where(index => _said[index].Act is not null && !IsUndone(index))
            .OrderBy(index => _said[index].Day).ThenBy(index => index))
        {
            shelf.Names = new(_said[index].Names, _lastBox);
            if (_said[index].Act!(shelf, AmountOf(index)))
                continue;
            _said.RemoveRange(count, _said.Count - count);
            return false;
        }

        _shelf = shelf;
        foreach (var (item, number) in _said.SelectMany(said => said.Names))
            _lastBox[item] = Math.Max(_lastBox.GetValueOrDefault(item), number.Max());
        return true;
    }

    private sealed record Said(int Day, Func<NaiveShelf, long, bool>? Act, long Amount)
    {
        public int? Undoes { get; init; }

        public int? Amends { get; init; }

        public Dictionary<string, List<long>> Names { get; } = [];
    }
}

/// <summary>The names of the boxes that came with one entry: they stay, and none is given again.</summary>
internal sealed class NaiveNames(Dictionary<string, List<long>> given, Dictionary<string, long> last)
{
    private readonly Dictionary<string, int> _count = [];

    public string Next(string item)
    {
        var names = given.TryGetValue(item, out var known) ? known : given[item] = [];
        var index = _count[item] = _count.GetValueOrDefault(item) + 1;
        if (names.Count < index)
            names.Add(last[item] = last.GetValueOrDefault(item) + 1);
        return $"{item}/{names[index - 1]}";
    }
}

/// <summary>Boxes and baths while they are gone through once.</summary>
internal sealed class NaiveShelf
{
    private readonly List<Box> _boxes = [];
    private readonly Dictionary<string, (long Area, bool Ended)> _baths = [];

    public NaiveNames Names { get; set; } = new([], []);

    public IEnumerable<(string Code, long Held)> Boxes =>
        _boxes.Where(box => box.Held > 0).Select(box => (box.Code, box.Held));

    public long OnHand(string item) => _boxes.Where(box => box.Item == item).Sum(box => box.Held);

    public long AreaOf(string bath) => _baths.TryGetValue(bath, out var known) && !known.Ended ? known.Area : -1;

    public bool Receive(string item, long packs, long pack)
    {
        for (var i = 0; i < packs; i++)
            _boxes.Add(new(item, pack, Names.Next(item)) { Held = pack });
        return packs > 0;
    }

    public bool Open(string item)
    {
        var box = _boxes.FirstOrDefault(box => box.Item == item && box.Held > 0 && box.IsSealed);
        if (box is not null)
            box.IsOpened = true;
        return box is not null;
    }

    public bool ThrowAway(string item, long quantity) => Draw(item, quantity, opensWhole: false);

    public bool Count(string item, long found)
    {
        var difference = found - OnHand(item);
        if (found < 0 || difference == 0)
            return false;
        if (difference < 0)
            return Draw(item, -difference, opensWhole: true);
        var first = Reach(item).FirstOrDefault();
        if (first is not null)
            first.Held += difference;
        return first is not null;
    }

    public bool Mix(string bath, string item, long quantity) =>
        _baths.TryAdd(bath, (0, false)) && Draw(item, quantity, opensWhole: true);

    public bool PourOut(string bath)
    {
        if (!_baths.TryGetValue(bath, out var known) || known.Ended)
            return false;
        _baths[bath] = known with { Ended = true };
        return true;
    }

    public bool Session(string bath, string film, long sheets, long areaEach, string developer,
        long concentrate, string supply)
    {
        if (sheets <= 0 || !_baths.TryGetValue(bath, out var known) || known.Ended)
            return false;
        _baths[bath] = known with { Area = known.Area + sheets * areaEach };
        return Draw(developer, concentrate, true) && Draw(film, sheets, true) && Draw(supply, 1, true);
    }

    private IEnumerable<Box> Reach(string item) =>
        _boxes.Where(box => box.Item == item && box.Held > 0).OrderBy(box => box.IsSealed);

    private bool Draw(string item, long quantity, bool opensWhole)
    {
        if (quantity <= 0 || OnHand(item) < quantity)
            return false;
        foreach (var box in Reach(item).ToList())
        {
            var taken = Math.Min(box.Held, quantity);
            if (taken == 0)
                break;
            box.IsOpened |= opensWhole || taken != box.Size;
            box.Held -= taken;
            quantity -= taken;
        }

        return true;
    }

    private sealed class Box(string item, long size, string code)
    {
        public string Item => item;

        public long Size => size;

        public string Code => code;

        public long Held { get; set; }

        public bool IsOpened { get; set; }

        public bool IsSealed => !IsOpened && Held >= Size;
    }
}
