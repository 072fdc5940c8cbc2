using Ledger.Core.Baths;

namespace Ledger.Core.Planning;

/// <summary>What lies in the tray of a step whose solution is used again: never a bath that must not be used.</summary>
internal sealed record BathTray
{
    /// <summary>The bath that is in use; null when a fresh one is to be mixed, or it is not decided.</summary>
    public Bath? Stands { get; init; }

    /// <summary>The bath that a fresh one is mixed like; null for as the process says.</summary>
    public Bath? Like { get; init; }

    /// <summary>What stands there in words; null where a fresh bath is mixed.</summary>
    public string? Text { get; init; }

    /// <summary>The trays of one item in their order, after what the outlooks say was done.</summary>
    /// <param name="outlooks">Those of the item: the bath that counts, then the second.</param>
    public static IEnumerable<BathTray> Of(IReadOnlyList<BathOutlook> outlooks)
    {
        var (first, second) = (outlooks[0], outlooks.Count > 1 ? outlooks[1] : null);
        if (first.Choices.Length > 0)
            return [new() { Text = $"bath {first.Choices}" }];
        if (first.Cure == BathCure.Split)
            return outlooks.Select(_ => new BathTray { Text = $"{first.Item}: decide first how it takes the session" });
        return first.Cure switch
        {
            BathCure.Rotate => [In(second!.Bath!), Fresh(first.Bath)],
            BathCure.MixPair => [Fresh(first.Bath), Fresh(second!.Bath)],
            BathCure.Mix => [Fresh(first.Bath), .. second is null ? [] : new[] { Either(second, first.Bath) }],
            _ => [In(first.Bath!), .. second is null ? [] : new[] { Either(second, first.Bath) }],
        };
    }

    private static BathTray Either(BathOutlook outlook, Bath? like) =>
        outlook is { Bath: { } bath, Cure: BathCure.None } ? In(bath) : Fresh(outlook.Bath ?? like);

    private static BathTray In(Bath bath) => new() { Stands = bath, Text = $"bath {bath.Code}" };

    private static BathTray Fresh(Bath? like) => new() { Like = like };
}
