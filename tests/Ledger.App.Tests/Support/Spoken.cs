using System.Globalization;
using Ledger.Core.Baths;
using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.App.Tests.Support;

/// <summary>An entry as somebody would type it on the command line.</summary>
internal static class Spoken
{
    public static string[] Of(Entry entry) =>
    [
        "record", entry.Kind.Replace(' ', '-'), .. Words(entry),
        .. entry is Undo ? [] : Option("--date", Dates.Text(entry.Date)),
        .. Option("--note", entry.Note), .. Option("--reference", entry.Key),
    ];

    private static string[] Words(Entry entry) => entry switch
    {
        ItemDefinition definition => Item(definition.Item),
        ProcessDefinition process => [
            process.Process, .. process.Steps.OrderBy(step => step.Number).SelectMany(step => Option("--step", Step(step)))],
        Delivery delivery => Delivery(delivery),
        Opening opening => [opening.Container, .. Option("--batch", opening.Batch)],
        BathMixing bath => Bath(bath),
        SessionLog session => Session(session),
        Discard discard => [
            discard.What, .. discard.Quantity is { } some ? [Amount(some)] : Array.Empty<string>(), .. Option("--reason", discard.Reason)],
        StockCount count => [count.What, Amount(count.Found), .. Option("--reason", count.Reason)],
        Decanting decanting => [decanting.From, .. decanting.Bottles.SelectMany(bottle => Option("--into", Amount(bottle.Size)))],
        Rotation rotation =>
        [
            rotation.NewBath, .. Option("--bath", rotation.Bath), .. Option("--amount", rotation.Amount is { } amount ? Amount(amount) : null),
            .. Option("--reason", rotation.Reason), .. Option("--jug", rotation.Jug),
        ],
        ClearingTest test =>
        [
            test.Bath, test.Film, Number(test.Seconds), .. test.IsFresh ? ["--fresh"] : Array.Empty<string>(),
            .. test.Sheets > 0 ? Option("--sheets", Number(test.Sheets)) : [],
        ],
        JugStart start => [start.Jug, $"{Number(start.Size.Millilitres)}ml", start.Contents],
        JugHandover handover => [handover.Jug, handover.To],
        SettingChange change => [change.Setting, change.Value],
        HolderDefinition holder => [
            holder.Holder, .. Option("--format", holder.Format.Code), .. Option("--sides", string.Join('/', holder.Sides)),
            .. Option("--notch", holder.Notch), .. Option("--bought", holder.BoughtOn is { } day ? Dates.Text(day) : null)],
        FormatDefinition { Format: var format } =>
            [format.Code, .. Option("--area", $"{Number(format.Area.SquareInches)} sqin"), .. Flag("--roll", format.Unit == Unit.Roll)],
        StorageMove move =>
            [move.Container, .. Option("--to", move.To), .. Option("--open-from", move.OpensFrom is { } day ? Dates.Text(day) : null)],
        ExposureIndexSetting rating => [rating.Container, Number(rating.ExposureIndex)],
        Load load => [.. load.Sides, .. Option("--from", load.From), .. Flag("--anyway", load.Anyway)],
        ExposureNote exposure => [
            .. exposure.Sides, .. Option("--group", exposure.Group), .. Option("--subject", exposure.Subject), .. Flag("--anyway", exposure.Anyway)],
        Unload unload => [.. unload.From, .. Option("--group", unload.Group), .. Option("--to", unload.To)],
        Cleaning cleaning => [.. cleaning.Holders, .. Flag("--bagged", cleaning.IsBagged)],
        SideService service => [.. service.Sides, .. Option("--reason", service.Reason), .. Flag("--back", service.IsInService)],
        KeeperNaming keeper => [keeper.Negative],
        OrderPlacement order => Order(order),
        PriceRiseNotice rise => [rise.Item, Number(rise.Percent), .. Option("--from", Dates.Text(rise.From))],
        PlannedSession plan => Plan(plan),
        PrintSession prints => [
            prints.Session, .. prints.Lines.SelectMany(line => Option("--sheets", Line(line))), .. Option("--bath", prints.Bath)],
        Undo undo => [undo.Reference ?? Number(undo.Number), .. Option("--reason", undo.Reason)],
        _ => throw new ArgumentException($"nobody says a {entry.Kind}", nameof(entry)),
    };

    private static string[] Item(Item item) =>
    [
        item.Code, .. Option("--name", item.Name), .. Option("--kind", item.Kind.Name()), .. Option("--role", item.Role.Name()),
        .. Option("--format", item.Format?.Code), .. Option("--unit", item.Unit.Name()), .. Option("--pack", Number(item.Pack.Value)),
        .. Option("--dilution", item.Dilution?.Text), .. Option("--capacity", Number(item.Capacity?.PerLitre.SquareInches)),
        .. Option("--basis", item.Capacity?.Basis), .. Option("--minimum-per-80", Number(item.MinimumPer80SquareInches?.Millilitres)),
        .. Option("--fixer-factor", Number(item.FixerFactorThousandths / 1000m)),
        .. Option("--sealed-days", Number(item.Keeping.SealedDays)),
        .. Option("--opened-full-days", Number(item.Keeping.OpenedFullDays)),
        .. Option("--opened-part-days", Number(item.Keeping.OpenedPartDays)),
        .. Option("--working-full-days", Number(item.Keeping.WorkingFullDays)),
        .. Option("--working-part-days", Number(item.Keeping.WorkingPartDays)),
        .. Option("--tray-hours", Number(item.Keeping.TrayHours)), .. Option("--lead-time-days", Number(item.LeadTimeDays)),
        .. Option("--service-level", Number(item.ServiceLevel)), .. Option("--minimum-on-hand", Number(item.MinimumOnHand?.Value)),
        .. item.OtherCapacities.SelectMany(other => Option("--other-capacity", $"{Number(other.PerLitre.SquareInches)} {other.Basis}")),
        .. Option("--formula", item.Formula), .. Option("--cautions", item.Cautions),
    ];

    private static string Step(ProcessStep step)
    {
        var words = new List<string?>
        {
            step.Role.Name(), step.Item, step.Dilution?.Text, step.Amount is { } amount ? Amount(amount) : null,
            step.WorkingVolume is { } volume ? $"in {Number(volume.Millilitres)}ml" : null, step.Use == StepUse.Reused ? "reused" : null,
            step.Minutes is { } minutes ? $"for {Number(minutes)}" : null, $"per {step.Per.Name()}",
        };
        return string.Join(' ', words.Where(word => !string.IsNullOrEmpty(word))) + Note(step.Note);
    }

    private static string[] Delivery(Delivery delivery) =>
    [
        .. Line(delivery.Lines.Single()), .. Money("--discount", delivery.Discount), .. Money("--shipping", delivery.Shipping),
        .. Money("--duty", delivery.Duty), .. Option("--currency", delivery.Currency), .. Option("--rate", Number(delivery.Rate)),
    ];

    private static string[] Line(DeliveryLine line) =>
    [
        line.Item, Number(line.Packs)!, .. Money("--price", line.Price ?? Core.Measures.Money.Zero),
        .. Option("--expires", line.ExpiresOn is { } date ? Dates.Text(date) : null), .. Option("--batch", line.Batch),
        .. Option("--storage", line.Storage), .. Option("--order", line.Order),
    ];

    /// <summary>All lines of an order that is spoken are expected on the same day.</summary>
    private static string[] Order(OrderPlacement order) =>
    [
        "place", order.Order, .. order.Lines.Select(line => $"{line.Packs} {line.Item} at {line.Price.Amount}"),
        .. Option("--expected", order.Lines[0].ExpectedOn is { } day ? Dates.Text(day) : null), .. Option("--supplier", order.Supplier),
        .. order.IsPrepaid ? ["--prepaid"] : Array.Empty<string>(), .. order.Lines[0].IsBackOrdered ? ["--back-ordered"] : Array.Empty<string>(),
    ];

    private static string[] Plan(PlannedSession plan) =>
    [
        plan.Plan, .. Option("--on", Dates.Text(plan.On)), .. Option("--process", plan.Request.Process),
        .. plan.Request.Sheets.SelectMany(sheets => Option("--sheets", Line(sheets))),
        .. Option("--minutes", plan.Request.Times.Text), .. Option("--bath", plan.Request.Bath), .. Flag("--trip", plan.IsTrip),
    ];

    private static string Line(RequestedSheets sheets) => string.Concat(
        $"{sheets.Count} {sheets.Film} {sheets.Group}".TrimEnd(),
        sheets.Holder is { Length: > 0 } holder ? $" in {holder}" : "",
        sheets.From is { Length: > 0 } from ? $" from {from.Replace(" ", "", StringComparison.Ordinal)}" : "",
        sheets.Subject is { Length: > 0 } subject ? $" : {subject}" : "");

    private static string[] Bath(BathMixing bath) =>
    [
        bath.Bath, bath.Item, $"{Number(bath.WorkingVolume.Millilitres)}ml", .. Option("--dilution", bath.Dilution?.Text),
        .. Option("--amount", bath.Amount is { } amount ? Amount(amount) : null), .. Option("--material", bath.Material.Name()),
        .. Option("--capacity", Number(bath.Capacity?.PerLitre.SquareInches)), .. Option("--basis", bath.Capacity?.Basis),
        .. Option("--paired-with", bath.PairedWith), .. Option("--from", bath.Container),
    ];

    private static string[] Session(SessionLog session) =>
    [
        session.Session, .. Option("--process", session.Process), .. session.Lines.SelectMany(line => Option("--sheets", Line(line))),
        .. Option("--bath", session.Bath), .. Flag("--anyway", session.Anyway),
    ];

    private static string Line(SessionLine line)
    {
        var words = new List<string>
        {
            Number(line.Sheets), line.Item, Fates.Names.Contains(line.Group) ? $"group {line.Group}" : line.Group, line.Fate.Name(),
            line.Cause?.Name() ?? "", From(line), line.Developer is { } developer ? $"{Number(developer.Millilitres)}ml" : "", line.Container is { } box ? $"from {box}" : "",
        };
        return string.Join(' ', words.Where(word => word.Length > 0)) + Note(line.Note);
    }

    private static string Line(PrintLine line) =>
        $"{line.Sheets} {line.Item} {line.Purpose.Name()}{(line.Strips > 0 ? $" {line.Strips} of {line.StripsPerSheet}" : "")}{Note(line.Note)}";

    private static string From(SessionLine line) => line.From is not { } from ? ""
        : from.StartsWith($"{line.Item} ", StringComparison.Ordinal) ? $"from exposed {from[(line.Item.Length + 1)..]}" : $"from {from}";

    private static string[] Flag(string name, bool isSet) => isSet ? [name] : [];

    private static string Note(string note) => note.Length == 0 ? "" : $": {note}";

    private static string Amount(Quantity quantity) => $"{Number(quantity.Value)}{quantity.Unit.Name()}";

    private static string[] Money(string name, Money money) => money == Core.Measures.Money.Zero ? [] : [name, money.ToString()];

    private static string[] Option(string name, string? value) => string.IsNullOrEmpty(value) ? [] : [name, value];

    private static string Number(decimal value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    private static string? Number(decimal? value) => value is { } known ? Number(known) : null;
}
