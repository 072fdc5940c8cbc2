namespace Ledger.Storage.Reading;

/// <summary>Gives a state of the file to those who read after the reading that made them has ended.</summary>
internal interface IReading
{
    /// <summary>Whether the state is the one that is being written now.</summary>
    bool IsWriting { get; }

    /// <summary>Looks something up in the state that is held, or in one of its own.</summary>
    T In<T>(Func<Snapshot, T> look);
}

/// <summary>One state, whatever is written into it meanwhile.</summary>
/// <param name="snapshot">The state.</param>
internal sealed class InsideOf(Snapshot snapshot) : IReading
{
    /// <inheritdoc/>
    public bool IsWriting => true;

    /// <inheritdoc/>
    public T In<T>(Func<Snapshot, T> look) => look(snapshot);
}
