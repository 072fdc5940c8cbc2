using Ledger.Core.Journal.Entries;
using Ledger.Core.Stock;

namespace Ledger.App.Values;

/// <summary>Bottles as they are typed: "250ml", "4 of 250ml", "500ml with 320ml", "250ml as small-1".</summary>
/// <param name="Count">How many of them.</param>
/// <param name="Size">What each holds when full.</param>
/// <param name="Fill">What goes in; null for a full one.</param>
/// <param name="Name">What is written on it.</param>
internal sealed record BottlePhrase(int Count, Amount Size, Amount? Fill, string? Name)
{
    public const string Form = "[COUNT of] SIZE [with AMOUNT] [as NAME]";

    public static BottlePhrase Parse(string text)
    {
        var words = new Queue<string>(text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (words.Count == 0)
            throw new FormatException("a bottle is missing; write its size, such as 250ml");
        var count = 1;
        if (words.Count > 2 && words.ElementAt(1).Equals("of", StringComparison.OrdinalIgnoreCase))
        {
            count = Text.Whole(words.Dequeue()) is > 0 and <= 200 and var some
                ? some : throw new FormatException($"\"{text}\": from 1 to 200 bottles can be filled");
            words.Dequeue();
        }

        var bottle = new BottlePhrase(count, Amount.Parse(words.Dequeue()), null, null);
        while (words.TryDequeue(out var word))
            bottle = (word.ToLowerInvariant(), words.TryDequeue(out var next)) switch
            {
                ("with", true) => bottle with { Fill = Amount.Parse(next!) },
                ("as", true) when count == 1 => bottle with { Name = next },
                _ => throw new FormatException($"\"{text}\": write bottles as {Form}; a name is for a single one"),
            };
        return bottle;
    }

    /// <summary>The bottles, in the unit of the item.</summary>
    public IEnumerable<FilledBottle> For(Item? item) =>
        Enumerable.Range(0, Count).Select(_ => new FilledBottle(Size.For(item), Fill?.For(item), Name));
}
