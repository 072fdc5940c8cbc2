namespace Ledger.Storage.Tests.Model;

/// <summary>
/// The ledger as a child would keep it: boxes with numbers in them, and for every entry a list of what it added to which box. It shares no
/// code with the real one.
/// </summary>
internal sealed class NaiveLedger
{
    private readonly List<Box> _boxes = [];
    private readonly List<Done> _done = [];
    private readonly Dictionary<string, (long Area, bool Ended, int MixedBy)> _baths = [];

    public int Entries => _done.Count;

    public long OnHand(string item) => _boxes.Where(box => box.Item == item).Sum(box => box.Held);

    public long AreaOf(string bath) => _baths.TryGetValue(bath, out var known) && !known.Ended ? known.Area : -1;

    public bool Receive(string item, int packs, long pack)
    {
        var done = new Done();
        for (var i = 0; i < packs; i++)
        {
            var box = new Box(item, pack) { CameWith = done };
            _boxes.Add(box);
            done.Changes.Add((box, pack));
        }

        return Accept(done);
    }

    public bool Open(string item)
    {
        var box = _boxes.FirstOrDefault(box => box.Item == item && box.Held > 0 && box.IsSealed);
        if (box is null)
            return false;
        var done = new Done();
        box.OpenedBy.Add(done);
        return Accept(done);
    }

    public bool ThrowAway(string item, long quantity)
    {
        var done = new Done();
        return Draw(done, item, quantity, opensWhole: false) && Accept(done);
    }

    public bool Count(string item, long found)
    {
        var difference = found - OnHand(item);
        var done = new Done();
        if (difference == 0)
            return false;
        if (difference < 0)
            return Draw(done, item, -difference, opensWhole: true) && Accept(done);
        var first = Reach(item).FirstOrDefault();
        if (first is null)
            return false;
        done.Changes.Add((first, difference));
        return Accept(done);
    }

    public bool Mix(string bath, string item, long quantity)
    {
        var done = new Done();
        if (_baths.ContainsKey(bath) || !Draw(done, item, quantity, opensWhole: true))
            return false;
        _baths[bath] = (0, false, _done.Count);
        done.Mixed = bath;
        return Accept(done);
    }

    public bool PourOut(string bath)
    {
        if (!_baths.TryGetValue(bath, out var known) || known.Ended)
            return false;
        _baths[bath] = known with { Ended = true };
        return Accept(new() { Ended = bath });
    }

    public bool Session(string bath, string film, int sheets, long areaEach, string developer, long concentrate, string supply)
    {
        var done = new Done { Worked = (bath, sheets * areaEach) };
        if (!_baths.TryGetValue(bath, out var known) || known.Ended)
            return false;
        if (!Draw(done, developer, concentrate, true) || !Draw(done, film, sheets, true) || !Draw(done, supply, 1, true))
            return Undo(done);
        _baths[bath] = known with { Area = known.Area + sheets * areaEach };
        return Accept(done);
    }

    public bool Correct(int index)
    {
        if (index >= _done.Count || _done[index] is { IsReversed: true } or { IsUndo: true } || UsedBath(index))
            return false;
        var done = _done[index];
        if (done.Mixed is { } mixed && _baths[mixed].Ended)
            return false;
        if (done.Changes.GroupBy(change => change.Box).Any(box => box.Key.Held < box.Sum(change => change.Quantity)))
            return false;
        if (done.Changes.Any(change => change.Box.CameWith == done && change.Box.Held != change.Quantity))
            return false;
        if (done.Mixed is { } bath)
            _baths.Remove(bath);
        if (done.Ended is { } ended)
            _baths[ended] = _baths[ended] with { Ended = false };
        if (done.Worked is { } worked)
            _baths[worked.Bath] = _baths[worked.Bath] with { Area = _baths[worked.Bath].Area - worked.Area };
        Undo(done);
        done.IsReversed = true;
        return Accept(new() { IsUndo = true });
    }

    private bool UsedBath(int index) =>
        _done[index].Mixed is { } bath && _done.Any(done => !done.IsReversed && done.Worked?.Bath == bath);

    private IEnumerable<Box> Reach(string item) => _boxes.Where(box => box.Item == item && box.Held > 0).OrderBy(box => box.IsSealed);

    private bool Draw(Done done, string item, long quantity, bool opensWhole)
    {
        if (quantity <= 0 || OnHand(item) < quantity)
            return false;
        foreach (var box in Reach(item).ToList())
        {
            var taken = Math.Min(box.Held, quantity);
            if (taken == 0)
                break;
            done.Changes.Add((box, -taken));
            if (box.OpenedBy.Count == 0 && (opensWhole || taken != box.Size))
                box.OpenedBy.Add(done);
            box.Held -= taken;
            quantity -= taken;
        }

        foreach (var (box, change) in done.Changes.Where(change => change.Box.Item == item))
            box.Held -= change; // applied again by Accept
        return true;
    }

    private bool Accept(Done done)
    {
        foreach (var (box, change) in done.Changes)
            box.Held += change;
        _done.Add(done);
        return true;
    }

    private bool Undo(Done done)
    {
        foreach (var box in _boxes)
            box.OpenedBy.Remove(done);
        if (_done.Contains(done))
            foreach (var (box, change) in done.Changes)
                box.Held -= change;
        return false;
    }

    private sealed class Box(string item, long size)
    {
        public string Item => item;

        public long Size => size;

        public Done? CameWith { get; init; }

        public long Held { get; set; }

        public HashSet<Done> OpenedBy { get; } = [];

        public bool IsSealed => OpenedBy.Count == 0 && Held >= Size;
    }

    private sealed class Done
    {
        public List<(Box Box, long Quantity)> Changes { get; } = [];

        public string? Mixed { get; set; }

        public string? Ended { get; set; }

        public (string Bath, long Area)? Worked { get; set; }

        public bool IsReversed { get; set; }

        public bool IsUndo { get; set; }
    }
}
