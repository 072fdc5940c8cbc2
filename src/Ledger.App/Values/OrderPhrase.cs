using Ledger.Core.Journal.Entries;

namespace Ledger.App.Values;

/// <summary>A line of an order as it is typed: "2 fen80 at 186", "1 syrup".</summary>
internal static class OrderPhrase
{
    public const string Form = "PACKS ITEM [at PRICE]";

    public static OrderedPacks Parse(string text)
    {
        var phrase = new Phrase(text);
        var line = new OrderedPacks
        {
            Packs = Text.Whole(phrase.Take("how many packs"))!.Value,
            Item = phrase.Take("the item"),
        };
        while (phrase.TryTake(out var word))
            line = word.ToLowerInvariant() switch
            {
                "at" => line with { Price = Text.Money(phrase.Take("the price of a pack after \"at\""))!.Value },
                _ => throw phrase.Refuse($"\"{word}\" has no place here; a line of an order is written as {Form}"),
            };
        return line;
    }
}
