namespace Ledger.Storage.Reading;

/// <summary>
/// What the ledger holds, read once for each day and state of the file, however many readings ask. A posting changes
/// the holdings that the next one is decided on; those that were lent to a reading are the reader's and are never
/// changed.
/// </summary>
/// <param name="reading">Where the holdings look things up later.</param>
/// <param name="definitionsOn">What was defined otherwise on a day; null for nothing.</param>
internal sealed class SharedHoldings(IReading reading, Func<Snapshot, LocalDate, Action<Holdings>?> definitionsOn)
{
    private readonly Dictionary<LocalDate, Holdings> _byDay = [];
    private readonly HashSet<LocalDate> _lent = [];
    private (long Version, long Changes) _state;

    /// <summary>The holdings of a day to decide on: not to be handed out.</summary>
    public Holdings On(LocalDate day, Snapshot snapshot)
    {
        if (_state != snapshot.State)
            Forget();
        _state = snapshot.State;
        return _byDay.TryGetValue(day, out var known) ? known
            : _byDay[day] = new HoldingsReader(snapshot).Read(day, new(reading, day), definitionsOn(snapshot, day));
    }

    /// <summary>The holdings of a day for a reading.</summary>
    public Holdings Lend(LocalDate day, Snapshot snapshot)
    {
        var holdings = On(day, snapshot);
        _lent.Add(day);
        return holdings;
    }

    /// <summary>
    /// The reading has ended. What was lent of one day serves the next reading too, while nothing is written: readers
    /// change nothing. Other days are let go.
    /// </summary>
    /// <param name="kept">The day, today.</param>
    public void EndReading(LocalDate kept)
    {
        foreach (var day in _lent.Where(day => day != kept).ToList())
        {
            _byDay.Remove(day);
            _lent.Remove(day);
        }
    }

    /// <summary>
    /// Follows a posting that was written. An undo brings back what is no longer held here, so after it they are read
    /// from the file.
    /// </summary>
    public void Follow(Posting posting, LocalDate today, Snapshot inside)
    {
        var isToBeRead = posting.Entry is Core.Journal.Entries.Undo || _lent.Contains(today);
        var holdings = isToBeRead ? null : _byDay.GetValueOrDefault(today);
        Forget();
        if (holdings is null)
            return;
        holdings.Apply(posting);
        _byDay[today] = holdings;
        _state = inside.State;
    }

    /// <summary>Nothing that was read holds any more.</summary>
    public void Forget()
    {
        _byDay.Clear();
        _lent.Clear();
    }
}
