using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// Liquids go from bottle to bottle, powder becomes stock solution: nothing of the quantity and the cost is lost on the
/// way.
/// </summary>
internal static class BottleRules
{
    private const int MostBottles = 200;

    public static void Post(Decanting decanting, Draft draft)
    {
        var source = Source(decanting.From, draft);
        var item = draft.Item(source.Lot.Item);
        Require.That(item.Unit == Unit.Millilitre,
            $"{item.Code} is kept in {item.Unit.Name()}; only liquids are decanted");
        var amounts = Amounts(decanting.Bottles, source.Held, item, draft);
        var names = new List<string>();
        for (var i = 0; i < amounts.Count; i++)
        {
            var bottle = NewBottle(decanting.Bottles[i], item, source.Lot, names, draft);
            var from = draft.Container(source.Place);
            var cost = from.CostOf(amounts[i]);
            draft.Move(new(from, amounts[i], cost), bottle.Place);
            draft.Touch(bottle with { Held = amounts[i], Value = cost });
        }

        draft.Summary =
            $"decanted {item.Of(amounts.Sum(amount => amount.Base)).ToText(draft.Style)} of {source.Code} into "
                + $"{string.Join(", ", names)}";
    }

    public static void Post(StockSolution mixing, Draft draft)
    {
        var stock = draft.Item(mixing.Item);
        Require.That(
            stock.Kind == ItemKind.Chemical && stock.Unit == Unit.Millilitre,
                $"{stock.Code} is not a liquid chemical, so it cannot be a stock solution; name a chemical that is "
                    + "kept in ml");
        var code = mixing.From ?? stock.StockOf ?? throw new RefusedException(
            RefusalKind.NotAccepted, $"say what {stock.Code} is mixed from");
        var source = draft.Item(code);
        Require.That(source.Code != stock.Code,
            $"{stock.Code} cannot be mixed from itself; name what it is mixed from");
        Require.That(mixing.Volume > default(Volume), "the volume must be more than nothing; say it, such as 1000ml");
        var draws = draft.Take(source, Wanted(mixing, source, draft), mixing.Container, Places.Mixing,
            booksDifference: false);

        var quantity = Quantity.Of(mixing.Volume);
        var cost = new Money(draws.Sum(draw => draw.Cost.Millionths));
        var lot = new Lot(
            draft.NewLot(), stock.Code, mixing.Date, quantity, cost,
            string.Join(" ", draws.Select(draw => draw.From.Lot.Batch).Distinct()).Trim(),
            null, "") {
            IsMixed = true, Formula = stock.Formula, IsPriced = draws.All(draw => draw.From.Lot.IsPriced),
        };
        draft.Add(new LotMixed(lot, source.Code));
        IReadOnlyList<FilledBottle> bottles = mixing.Bottles.Count > 0 ? mixing.Bottles : [new(quantity, quantity)];
        var amounts = Amounts(bottles, quantity, stock, draft);
        Require.That(
            amounts.Sum(amount => amount.Base) == quantity.Base,
            $"the bottles take {stock.Of(amounts.Sum(amount => amount.Base)).ToText(draft.Style)} "
            + $"of {quantity.ToText(draft.Style)}; name one more");
        var (left, names) = ((Quantity: quantity, Cost: cost), new List<string>());
        for (var i = 0; i < amounts.Count; i++)
        {
            var bottle = NewBottle(bottles[i], stock, lot, names, draft);
            var share = left.Cost.PartOf(amounts[i].Base, left.Quantity.Base);
            draft.Add(new Movement(lot.Id, Places.Mixing, bottle.Place, amounts[i].Base, share));
            draft.Touch(bottle with { Held = amounts[i], Value = share });
            left = (left.Quantity - amounts[i], left.Cost - share);
        }

        draft.Summary =
            $"mixed {quantity.ToText(draft.Style)} of {stock.Code} from {source.Code} for {cost.Text(draft.Style)}: "
                + $"{string.Join(", ", names)}";
    }

    private static Quantity Wanted(StockSolution mixing, Item source, Draft draft)
    {
        if (mixing.Amount is not { } amount)
        {
            Require.That(mixing.Packs is > 0 and <= 1000, $"the packs must be from 1 to 1000, not {mixing.Packs}");
            return source.Of(source.Pack.Base * mixing.Packs);
        }

        if (amount.Base % source.Pack.Base != 0 && source.Unit == Unit.Gram)
            draft.Remark(
                $"part of a pack of {source.Code} was weighed; a powder of several parts should be mixed whole, since "
                    + "its parts settle");
        return amount;
    }

    private static Container Source(string what, Draft draft) => draft.Holdings.Item(what) is { } item
        ? draft.ContainersOf(item).FirstOrDefault(draft.IsClear) ?? throw new RefusedException(
            RefusalKind.MoreThanHeld,
            $"no bottle of {item.Code} holds anything on {Dates.Text(draft.Date)}; record its delivery first")
        : Clear(draft.Container(what), draft);

    private static Container Clear(Container bottle, Draft draft)
    {
        SuspicionRules.RequireClear(bottle, draft);
        return bottle;
    }

    /// <summary>
    /// What goes into each bottle: what was said, or as much as it holds; the last one may stay part-full.
    /// </summary>
    private static List<Quantity> Amounts(IReadOnlyList<FilledBottle> bottles, Quantity held, Item item, Draft draft)
    {
        Require.That(bottles.Count is > 0 and <= MostBottles,
            $"from 1 to {MostBottles} bottles can be filled, not {bottles.Count}");
        var (left, amounts) = (held, new List<Quantity>());
        foreach (var bottle in bottles)
        {
            Require.Unit(item, bottle.Size);
            Require.Positive(bottle.Size, "the size of a bottle");
            var amount = bottle.Amount ?? (left < bottle.Size ? left : bottle.Size);
            Require.Unit(item, amount);
            Require.Positive(amount, "what goes into a bottle");
            Require.That(
                amount <= bottle.Size,
                $"{amount.ToText(draft.Style)} do not go into a bottle of {bottle.Size.ToText(draft.Style)}");
            if (amount > left)
                throw new RefusedException(
                    RefusalKind.MoreThanHeld,
                    $"{held.ToText(draft.Style)} are there, and {(held - left + amount).ToText(draft.Style)} are "
                        + "wanted");
            amounts.Add(amount);
            left -= amount;
        }

        return amounts;
    }

    private static Container NewBottle(FilledBottle filled, Item item, Lot lot, List<string> names, Draft draft)
    {
        var number = draft.NextContainerNumber(item.Code);
        var code = filled.Name is { } name ? Require.Name(name, "a bottle") : $"{item.Code}/{number}";
        if (draft.Holdings.Container(code) is not null || draft.Holdings.Item(code) is not null
            || draft.Holdings.Bath(code) is not null
            || names.Contains(code, StringComparer.OrdinalIgnoreCase))
            throw new RefusedException(RefusalKind.AlreadyThere, $"the name {code} is in use; give the bottle another");
        names.Add(code);
        var place = draft.NewPlace();
        draft.Add(new ContainerArrived(place, code, number, lot, filled.Size));
        draft.Add(new ContainerOpened(place));
        return new(place, code, lot, filled.Size, filled.Size with { Base = 0 }, Money.Zero, draft.Date);
    }
}
