using Ledger.Core.Journal.Entries;

namespace Ledger.Core.Journal.Kinds;

/// <summary>Every kind of entry, in the order in which entries of one day are posted when they come from files.</summary>
public static class EntryKinds
{
    /// <summary>All kinds.</summary>
    public static IReadOnlyList<EntryKind> All { get; } = [CountKind.Kind, ClearingTestKind.Kind];

    /// <summary>The kind of that name, in any case; null when there is none.</summary>
    public static EntryKind? Named(string name) => All.FirstOrDefault(kind => kind.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The kind of an entry.</summary>
    /// <exception cref="ArgumentException">Nothing describes it.</exception>
    public static EntryKind Of(Entry entry) =>
        All.FirstOrDefault(kind => kind.Describes(entry)) ?? throw new ArgumentException($"nothing describes a {entry.Kind}", nameof(entry));
}
