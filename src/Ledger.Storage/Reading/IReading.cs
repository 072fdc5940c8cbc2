namespace Ledger.Storage.Reading;

/// <summary>Gives a state of the file to those who read after the reading that made them has ended.</summary>
internal interface IReading
{
    /// <summary>Looks something up in the state that is held, or in one of its own.</summary>
    T In<T>(Func<Snapshot, T> look);
}

/// <summary>The state of one reader, or of a writer.</summary>
/// <param name="snapshot">The state.</param>
internal sealed class InsideOf(Snapshot snapshot) : IReading
{
    public T In<T>(Func<Snapshot, T> look) => look(snapshot);
}
