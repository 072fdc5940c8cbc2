namespace Ledger.Terminal.Pages;

/// <summary>A key on the line.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">As it is written.</param>
/// <param name="Label">What it does.</param>
/// <param name="IsHere">Whether it leads to where the user is.</param>
internal sealed record KeyHint(Key Key, string Name, string Label, bool IsHere = false)
{
    /// <summary>The keys of actions; those that have none are left to the list of actions.</summary>
    public static IEnumerable<KeyHint> Of(IEnumerable<ScreenAction> actions) =>
        actions.Where(action => action is { Key: not null, IsOnLine: true })
            .Select(action => new KeyHint(action.Key!, action.Name, action.Label));

    /// <summary>The columns it takes.</summary>
    public int Width => Name.Length + 1 + Label.Length;
}
