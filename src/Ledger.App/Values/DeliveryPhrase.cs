using Ledger.Core.Journal.Entries;

namespace Ledger.App.Values;

/// <summary>A line of a delivery as it is typed: "2 fen80 at 186 expires 2028-01-31 batch CP-3260 in freezer".</summary>
internal static class DeliveryPhrase
{
    public const string Form = "PACKS ITEM [at PRICE] [expires DATE] [batch NUMBER] [in STORAGE] [order ORDER]";

    public static DeliveryLine Parse(string text)
    {
        var phrase = new Phrase(text);
        var line = new DeliveryLine { Packs = Text.Number(phrase.Take("how many packs"))!.Value, Item = phrase.Take("the item") };
        while (phrase.TryTake(out var word))
            line = word.ToLowerInvariant() switch
            {
                "at" => line with { Price = Text.Money(phrase.Take("the price of a pack after \"at\""))!.Value },
                "expires" => line with { ExpiresOn = Text.Date(phrase.Take("the date after \"expires\"")) },
                "batch" => line with { Batch = phrase.Take("the number after \"batch\"") },
                "in" => line with { Storage = phrase.Take("the place after \"in\"") },
                "order" => line with { Order = phrase.Take("the order's name after \"order\"") },
                _ => throw phrase.Refuse($"\"{word}\" has no place here; a line is written as {Form}"),
            };
        return line;
    }
}
