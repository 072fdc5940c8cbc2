using Ledger.Terminal.Forms;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Screens;

/// <summary>The step that settles a notice: the form for it, filled in as far as the ledger knows.</summary>
/// <param name="ledger">The ledger.</param>
/// <param name="holdings">What it holds.</param>
/// <param name="readings">What is to be ordered.</param>
internal sealed class Settling(ILedger ledger, Holdings holdings, IReadOnlyList<ReorderReading> readings)
{
    /// <summary>What Enter on the notices does.</summary>
    public Step Of(NoticeGroup group)
    {
        var about = group.First.About;
        return group.First.Kind switch
        {
            NoticeKind.BathExhausted or NoticeKind.BathExpired => Renew(about),
            NoticeKind.BathEnding => new ScreenStep("Baths", about),
            NoticeKind.Expired => new FormStep(new DiscardForm(ledger, about)),
            NoticeKind.ExpiresSoon =>
                new TableStep(new ContainersModel(ledger, about.Split('/')[0]) { SelectedId = about }),
            NoticeKind.BelowMinimum or NoticeKind.OrderDue or NoticeKind.PriceRise => Order(about),
            NoticeKind.OrderLate => OrderNews(about),
            NoticeKind.LoadedLong =>
                new FormStep(new KindForm(ledger, "unload", ("from", string.Join(", ", group.About)))),
            NoticeKind.ExposedLong => new FormStep(new PlanForm(
                ledger, KnownSheets.Request(group.About.SelectMany(name => KnownSheets.Find(name, holdings.Film))))),
            NoticeKind.SideFaulty =>
                new FormStep(new KindForm(ledger, "service", ("sides", string.Join(' ', group.About)))),
            NoticeKind.ReplenisherDue or NoticeKind.ControlStripOut =>
                new FormStep(new KindForm(ledger, "top-up", ("bath", about))),
            NoticeKind.JugFull or NoticeKind.JugOld =>
                new FormStep(new KindForm(ledger, "jug-handover", ("jug", about))),
            NoticeKind.UnderSuspicion => new FormStep(new KindForm(ledger, "clearance", ("what", about))),
            _ => new MessageStep(RefusalText.Of(group.First.Step)),
        };
    }

    /// <summary>
    /// A pair is rotated while its ceiling allows it; otherwise what ended is discarded, and then a fresh one is mixed.
    /// </summary>
    private FormStep Renew(string code)
    {
        var bath = holdings.Bath(code)!;
        if ((holdings.IsSecond(bath) ? bath : holdings.SecondAfter(bath)) is not { } second)
            return Discarded(code, () => new FormStep(new BathForm(ledger, code)));
        var first = second == bath ? bath.PairedWith! : code;
        return holdings.IsAtCeiling(second)
            ? Discarded(second.Code,
                () => Discarded(first, () => new FormStep(new BathForm(ledger, first)), code), code)
            : new FormStep(new KindForm(ledger, "rotation", ("bath", first)));
    }

    private FormStep Discarded(string code, Func<Step> then, string? ended = null) =>
        new(new DiscardForm(ledger, code, ended is null ? null : WithItsPair(code, ended))) { Then = then };

    /// <summary>Why the other bath of a pair goes too, where it could still be used.</summary>
    private string? WithItsPair(string code, string ended) =>
        new BathReading(holdings.Bath(code)!, holdings.AsOf).IsUnusable
            ? null
            : $"{ended} ended, a fresh pair is mixed";

    private FormStep Order(string item) =>
        readings.FirstOrDefault(reading => reading.Item.Code == item) is { IsDue: false, Lines.Count: > 0 }
            ? OrderNews(item)
            : new FormStep(new OrderForm(ledger, readings, item));

    /// <summary>What is new of the order that waits for an item, the latest first.</summary>
    private FormStep OrderNews(string item) => new(new KindForm(
        ledger, "order-change",
        ("order", holdings.Orders.LinesOf(item).OrderBy(found => found.Line.ExpectedOn)
            .Select(found => found.Order.Code).FirstOrDefault()),
        ("item", item)));
}
