using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pictures;

namespace Ledger.Terminal.Pages;

/// <summary>What a form comes to as it stands.</summary>
internal abstract record Verdict
{
    /// <summary>The same for the pane under the fields.</summary>
    public abstract IReadOnlyList<Block> Blocks { get; }
}

/// <summary>Some fields cannot be read yet.</summary>
/// <param name="Problems">Which and why.</param>
internal sealed record Incomplete(IReadOnlyList<string> Problems) : Verdict
{
    public override IReadOnlyList<Block> Blocks =>
        [Block.Of("Not complete yet", Problems.Select(problem => "  " + problem))];
}

/// <summary>The rules refuse it.</summary>
/// <param name="Refusal">Why.</param>
internal sealed record Rejected(Refusal Refusal) : Verdict
{
    public override IReadOnlyList<Block> Blocks =>
    [
        Block.Of("This cannot be saved", RefusalText.Of(Refusal)),
    ];
}

/// <summary>It can be saved.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Posting">What it would write.</param>
internal sealed record Ready(Entry Entry, Posting Posting) : Verdict
{
    /// <summary>What the form shows beside the shelf before and after.</summary>
    public IReadOnlyList<Block> More { get; init; } = [];

    public override IReadOnlyList<Block> Blocks =>
    [
        .. Posting.Remarks.Count == 0 ? Array.Empty<Block>() : [Remarks],
        .. More,
        .. More.Count > 0 && Posting.Effects.Count == 0 ? Array.Empty<Block>() : [new("Before -> after", Effects)],
    ];

    private Block Remarks => Block.Of("Before you save", Posting.Remarks.Select(remark => $"  ! {remark}"));

    private IEnumerable<string> Effects(int width)
    {
        if (Posting.Effects.Count == 0)
            return ["Nothing on the shelf changes."];
        var what = Posting.Effects.Max(effect => effect.What.Length) + 2;
        var before = Posting.Effects.Max(effect => effect.Before.Length);
        return Posting.Effects.SelectMany(effect => Paragraph.Of(
            $"{effect.What.PadRight(what)}{effect.Before.PadLeft(before)} -> {effect.After}", width, what));
    }
}
