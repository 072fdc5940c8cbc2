namespace Ledger.Exchange.Import.Identity;

/// <summary>
/// A short hash of a content, with its number when the same content came before: rows of a file that repeat are told
/// apart.
/// </summary>
internal sealed class ContentHash
{
    private readonly Dictionary<string, int> _times = [];

    public string Of(string content)
    {
        var hash = Sha256.Hex(content)[..24];
        var times = _times[hash] = _times.GetValueOrDefault(hash) + 1;
        return times == 1 ? hash : $"{hash}-{times}";
    }
}
