using Ledger.Core.Baths;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Kinds;

/// <summary>
/// The cautions that stand before an act with chemistry: the kind's own line, then what the items that it names say.
/// </summary>
public static class ChemistryCautions
{
    /// <summary>The cautions of what is written so far; none where no chemistry is concerned.</summary>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="text">What stands in its fields.</param>
    /// <param name="holdings">What the ledger holds.</param>
    public static IReadOnlyList<string> Of(EntryKind kind, EntryText text, Holdings holdings)
    {
        if (kind.Caution.Length == 0)
            return [];
        var named = Texts(kind, text).Where(name => name.Length > 0).ToList();
        var items = named.SelectMany(name => Items(name, holdings)).Distinct().ToList();
        if (kind.Line is null && items.Count > 0 && items.TrueForAll(item => item.Kind != ItemKind.Chemical))
            return [];
        return
        [
            kind.Caution,
            .. items.Where(item => item.Cautions.Length > 0).Select(item => $"{item.Name}: {item.Cautions}"),
            .. named.Select(holdings.Jug).OfType<WasteJug>()
                .Select(jug => $"jug {jug.Code}, {jug.Contents}: {jug.Waste.Hazard()}").Distinct(),
        ];
    }

    /// <summary>What there is to know beside the line, for the help of whatever concerns chemistry.</summary>
    public static IReadOnlyList<string> Rest(EntryKind kind) =>
        kind.Caution.Length == 0 ? [] : [.. UsualCautions.Sentences, UsualCautions.Governs];

    private static IEnumerable<string> Texts(EntryKind kind, EntryText text) =>
        kind.AllFields.Select(field => text[field].Trim())
            .Concat(kind.Line is { } line
                ? text.Lines.SelectMany(one => line.Fields.Select(field => one[field].Trim()))
                : []);

    /// <summary>The items that a name stands for: itself, what is in a bottle or bath, what a process uses.</summary>
    private static IEnumerable<Item> Items(string name, Holdings holdings)
    {
        var codes = holdings.Process(name) is { } process ? process.Steps.Select(step => step.Item).OfType<string>()
            : [holdings.Bath(name)?.Item ?? holdings.Container(name)?.Lot.Item ?? name];
        return codes.Select(holdings.Item).OfType<Item>();
    }
}
