using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace Ledger.Core.Measures;

/// <summary>
/// The formats that a ledger knows: those the user has defined, then the common ones, and any size in inches,
/// centimetres or millimetres.
/// </summary>
public sealed class FormatTable
{
    private readonly Dictionary<string, Format> _own = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// What was found once, by how it was written: thousands of items have the same few formats. Who looks something up
    /// need not know that it is remembered, on whichever thread.
    /// </summary>
    private readonly ConcurrentDictionary<string, Format> _found = new(StringComparer.Ordinal);

    /// <summary>What is accepted beside the user's own names.</summary>
    public const string Accepted = "4x5, 8x10, 13x18cm, 120, 135-36, 7x17in or 100x125mm";

    /// <summary>The formats that have a line of their own, sheets before rolls, the smallest first.</summary>
    public IReadOnlyList<Format> All =>
    [
        .. _own.Values.Concat(Format.Common).DistinctBy(format => format).OrderBy(format => format.Unit)
            .ThenBy(format => format.Area)
            .ThenBy(format => format.Code, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>Whether the user has defined it, or its area.</summary>
    public bool IsOwn(Format format) => _own.ContainsKey(format.Code);

    /// <summary>Puts a format in, or in place of the one of its name.</summary>
    public void Put(Format format)
    {
        _own[format.Code] = format;
        _found.Clear();
    }

    /// <summary>The format of a name or size with the area that it counts with here.</summary>
    public bool TryFind(string text, [NotNullWhen(true)] out Format? format)
    {
        if (_found.TryGetValue(text, out format))
            return true;
        if (!_own.TryGetValue(Format.CodeOf(text) ?? text.Trim(), out format) && !Format.TryParse(text, out format))
            return false;
        _found[text] = format;
        return true;
    }

    /// <summary>The format of a name or size.</summary>
    /// <exception cref="FormatException">The ledger knows none of that name, and it is no size.</exception>
    public Format Find(string text) =>
        TryFind(text, out var format) ? format : throw new FormatException(Unknown(text));

    /// <summary>The sentence about a name that is neither known nor a size.</summary>
    public string Unknown(string text) => $"\"{text.Trim()}\" is not a format; write one such as {Accepted}"
        + (_own.Count == 0
            ? ""
            : $", or one of your own: {string.Join(", ", _own.Keys.Order(StringComparer.OrdinalIgnoreCase))}");
}
