using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Costing;

/// <summary>
/// The facts of a period by another cost formula: every sheet, millilitre and piece at what the formula says it cost.
/// The film of a lot costs each of its sheets in a session the same. Whatever the formula, opening + bought = used +
/// waste + on hand.
/// </summary>
/// <param name="stock">The stock of the same period by the formula.</param>
public sealed class Recosting(Revaluation stock)
{
    private readonly ILookup<long, CostedMove> _byEntry = stock.Costed.ToLookup(costed => costed.Move.Entry);
    private readonly ILookup<PlaceId, CostedMove> _byPlace = stock.Costed.ToLookup(costed => costed.Move.Other);

    /// <summary>Costs the facts of a period again, all but its sessions.</summary>
    /// <param name="facts">
    /// The facts as the ledger posted them, with the sessions costed by <see cref="Of(SessionUse)"/> as they were read.
    /// </param>
    public CostFacts Of(CostFacts facts)
    {
        var lost = Losses(facts, Places.LostOrGained);
        var thrown = Losses(facts, Places.Discarded);
        return facts with
        {
            OnHandBefore = Sum(stock.Items, item => item.Before),
            OnHandAfter = Sum(stock.Items, item => item.OnHand),
            Discarded = Sum(thrown, loss => loss.Cost),
            Lost = Sum(lost, loss => loss.Cost),
            FilmDiscarded = FilmLoss.Of([.. lost, .. thrown]),
            Losses = [.. lost, .. thrown],
            Baths = [.. facts.Baths.Select(bath => bath with { Share = Recost(bath.Share) })],
            Prints =
            [
                .. facts.Prints.Select(print => print with
                {
                    Stock = Spent(print.Entry, move => move.Other == Places.UsedUp || move.Other == Places.Prints),
                    Baths = Recost(print.Baths),
                }),
            ],
        };
    }

    /// <summary>Costs a session again.</summary>
    public SessionUse Of(SessionUse session) => session with
    {
        Developer = Spent(session.Entry, move => move.Other == Places.UsedUp && IsDeveloper(move)),
        OtherChemistry = Spent(session.Entry,
            move => move.Other == Places.UsedUp && move.Kind == ItemKind.Chemical && !IsDeveloper(move)),
        Supplies = Spent(session.Entry, move => move.Other == Places.UsedUp && move.Kind != ItemKind.Chemical),
        Baths = Recost(session.Baths),
        Lines = Recost(session.Entry, session.Lines),
    };

    private List<FilmUse> Recost(long session, IReadOnlyList<FilmUse> lines)
    {
        var recosted = lines.ToList();
        foreach (var lot in lines.Select((line, i) => (line, i)).GroupBy(pair => pair.line.Lot, pair => pair.i))
        {
            var cost = Spent(session,
                move => move.Lot == lot.Key && (move.Other == Places.FiledNegatives || move.Other == Places.Rejects));
            var shares = Share.Split(cost.Millionths, [.. lot.Select(i => lines[i].Sheets)]);
            foreach (var (i, share) in lot.Zip(shares))
                recosted[i] = lines[i] with { Cost = new(share) };
        }

        return recosted;
    }

    private List<BathPart> Recost(IEnumerable<BathPart> parts) =>
        [.. parts.Select(part => part with { Share = Recost(part.Share) })];

    private BathShare Recost(BathShare share)
    {
        var added = share.TopUps.Select(top => top with { Value = Spent(top.Entry, move => move.Other == share.Place) })
            .ToList();
        var all = Sum(_byPlace[share.Place], costed => costed.Cost);
        return share with { Value = all - Sum(added, top => top.Value), TopUps = added };
    }

    /// <summary>What went to a place outside day by day, less what a count brought back.</summary>
    private List<StockLoss> Losses(CostFacts facts, PlaceId to) =>
    [
        .. _byPlace[to].Where(costed => costed.Move.Date >= facts.From && costed.Move.Date <= facts.To)
            .GroupBy(costed => (costed.Move.Date, costed.Move.Item, costed.Move.Kind))
            .Select(group => new StockLoss(
                group.Key.Date, group.Key.Item, group.Key.Kind, -group.Sum(costed => costed.Move.Change),
                Sum(group, costed => costed.Move.Change < 0 ? costed.Cost : Money.Zero - costed.Cost))),
    ];

    private Money Spent(long entry, Func<StockMove, bool> which) =>
        Sum(_byEntry[entry].Where(costed => which(costed.Move)), costed => costed.Cost);

    private static bool IsDeveloper(StockMove move) => move.Kind == ItemKind.Chemical && move.IsDeveloper;

    private static Money Sum<T>(IEnumerable<T> parts, Func<T, Money> amount) =>
        new(parts.Sum(part => amount(part).Millionths));
}
