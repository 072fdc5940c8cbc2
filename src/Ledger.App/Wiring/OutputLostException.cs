namespace Ledger.App.Wiring;

/// <summary>A stream of the process cannot be written.</summary>
/// <param name="sentence">Which one, and why.</param>
/// <param name="hasReaderLeft">Whether it is a pipe that nobody reads any more.</param>
internal sealed class OutputLostException(string sentence, bool hasReaderLeft) : IOException(sentence)
{
    /// <summary>Whether it is a pipe that nobody reads any more.</summary>
    public bool HasReaderLeft => hasReaderLeft;
}
