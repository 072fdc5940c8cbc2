using CsCheck;

namespace Ledger.Core.Tests.Support;

/// <summary>
/// Entries on the shelf of <see cref="Shelves.WithBath"/>, as text: most of them possible, some refused.
/// </summary>
internal static class EntryGens
{
    public static Gen<string> Entry { get; } = Gen.Frequency(
        (3, Gen.Select(Item, Gen.Int[1, 30], Gen.Int[0, 99_999], (item, tenths, cents) =>
            $"delivery item={item} packs={tenths * 0.1m} price={cents * 0.01m}")),
        (1, Gen.Select(Container, container => $"opening container={container}")),
        (2, Gen.Select(Gen.Int[1, 9], Gen.Int[0, 9], Gen.Int[1, 20], Gen.Bool, (bath, first, decilitres, book) =>
            $"bath bath=F{bath} working_ml={decilitres * 100}"
                + $"{(first > 0 && first < bath ? $" paired_with=F{first}" : "")}{(book ? " book_difference=yes" : "")}")),
        (6, Gen.Select(Gen.Int[1, 60], Line, Gen.Int[0, 9], Gen.Bool, (session, lines, bath, book) =>
            $"session session=S{session} {lines}{(bath > 0 ? $" bath=F{bath}" : "")}"
                + $"{(book ? " book_difference=yes" : "")}")),
        (2, Gen.Select(Gen.Int[1, 9], bath => $"discard what=F{bath}")),
        (1, Gen.Select(Container, container => $"discard what={container}")),
        (1, Gen.Select(Gen.Int[1, 40], sheets => $"discard what=fen80 quantity={sheets}sheet")),
        (2, Gen.Select(Gen.Int[0, 2_500_000], microlitres => $"count item=syrup found={microlitres * 0.001m}ml")),
        (2, Gen.Select(Gen.Int[0, 80], sheets => $"count item=fen80 found={sheets}sheet")),
        (4, Gen.Select(Gen.Int[1, 60], number => $"undo entry={number}")));

    private static Gen<string> Item => Gen.OneOf(
        Gen.Const("fen80"), Gen.Const("reed400"), Gen.Const("syrup"), Gen.Const("fix"), Gen.Const("stop"),
        Gen.Const("gloves"));

    private static Gen<string> Container => Gen.Select(Item, Gen.Int[1, 5], (item, number) => $"{item}/{number}");

    private static Gen<string> Line => Gen.Select(
        Gen.OneOf(Gen.Const("fen80"), Gen.Const("reed400")), Gen.Int[1, 14],
        Gen.OneOf(Gen.Const(""), Gen.Const("_reject"), Gen.Const("_keeper")),
        Gen.OneOf(Gen.Const(""), Gen.Const("_25ml"), Gen.Const("_31.337ml")),
        (item, sheets, fate, developer) => $"line={sheets}_{item}{fate}{developer}").Array[1,
            3].Select(lines => string.Join(' ', lines));
}
