using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>Holders are registered, cleaned, and taken out of service side by side.</summary>
internal static class HolderRules
{
    private const int MostSides = 50;

    public static void Post(HolderDefinition definition, Draft draft)
    {
        var code = Name(definition.Holder, "a holder");
        var format = definition.Format;
        Require.That(format.Unit == Unit.Sheet,
            $"{format} is roll film and is not loaded into holders; name a format of sheet film");
        Require.That(definition.BoughtOn is null or { Year: >= 1900 and <= 2200 },
            "the day it was bought must lie between 1900 and 2200");
        var names = (definition.Sides.Count > 0 ? definition.Sides : draft.Holdings.Settings.Film.SideNames.Split('/'))
            .Select(name => Name(name, $"a side of {code}")).ToList();
        Require.That(names.Count <= MostSides, $"{code} has {names.Count} sides; at most {MostSides} are accepted");
        Require.That(
            names.Distinct(StringComparer.OrdinalIgnoreCase).Count() == names.Count,
            $"two sides of {code} have the same name; give each a name of its own");

        var known = draft.Holdings.Film.Holder(code);
        var holder = known is null ? New(code, format, names, draft) : Same(known, format, names);
        draft.Add(new HolderDefined(
            holder with { Notch = definition.Notch.Trim(), BoughtOn = definition.BoughtOn }, IsNew: known is null));
        if (known is null)
            draft.Show(holder.Code, "-", $"{format}, {string.Join(", ", holder.Sides.Select(side => side.Code))}");
        Change(draft, $"{code} notch", known?.Notch ?? "", definition.Notch.Trim());
        Change(draft, $"{code} bought", Day(known?.BoughtOn), Day(definition.BoughtOn));
        draft.Summary = $"holder {holder.Code}: {format}, sides {string.Join("/", names)}";
    }

    public static void Post(Cleaning cleaning, Draft draft)
    {
        Require.That(cleaning.Holders.Count > 0, "name at least one holder");
        var holders = cleaning.Holders.Select(name => Holder(name, draft)).DistinctBy(holder => holder.Id).ToList();
        foreach (var holder in holders)
        {
            draft.Add(new HolderCleaned(holder, cleaning.IsBagged));
            draft.Show(
                holder.Code, Cleaned(holder.CleanedOn, holder.IsBagged),
                Cleaned(holder.CleanedOn > cleaning.Date ? holder.CleanedOn : cleaning.Date, cleaning.IsBagged));
        }

        draft.Summary = $"cleaned {string.Join(", ", holders.Select(holder => holder.Code))}"
            + $"{(cleaning.IsBagged ? " and bagged" : "")}";
    }

    public static void Post(SideService service, Draft draft)
    {
        var reason = Require.Reason(service.Reason);
        var sides = draft.Film.Sides(service.Sides);
        foreach (var side in sides)
        {
            Require.That(
                (side.OutOfService is null) != service.IsInService,
                side.OutOfService is { } since ? $"{side.Code} is out of service already ({since})"
                    : $"{side.Code} is in service");
            draft.Add(new SideServed(side, service.IsInService, reason));
            draft.Film.Show(side, InService(side.OutOfService is null), InService(service.IsInService));
        }

        draft.Summary = $"{string.Join(", ", sides.Select(side => side.Code))} {(service.IsInService ? "back " : "")}"
            + $"{InService(service.IsInService)}: {reason}";
    }

    private static void Change(Draft draft, string what, string before, string after)
    {
        if (before != after)
            draft.Show(what, before.Length > 0 ? before : "-", after.Length > 0 ? after : "-");
    }

    private static string Day(LocalDate? date) => date is { } day ? Dates.Text(day) : "";

    private static string Cleaned(LocalDate? on, bool isBagged) =>
        on is { } day ? $"cleaned {Dates.Text(day)}{(isBagged ? ", bagged" : "")}" : "never cleaned";

    private static string InService(bool isInService) => isInService ? "in service" : "out of service";

    private static Holder Holder(string name, Draft draft) =>
        draft.Holdings.Film.Holder(name) ?? draft.Holdings.Film.Holder(draft.Film.Sides([name])[0].Holder)!;

    private static Holder New(string code, Format format, List<string> names, Draft draft)
    {
        var holder = new Holder
        {
            Id = draft.Holdings.Film.LastHolder + 1,
            Code = code,
            Format = format,
            Sides = [.. names.Select(name => new HolderSide(draft.NewPlace(), code, name))],
        };
        if (holder.Sides.FirstOrDefault(side => draft.Holdings.Film.Side(side.Code) is not null) is { } taken)
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"there is a side {taken.Code} already; give this holder another name");
        return holder;
    }

    private static Holder Same(Holder known, Format format, List<string> names)
    {
        Require.That(
            known.Format == format && known.Sides.Select(side => side.Name).SequenceEqual(names,
                StringComparer.OrdinalIgnoreCase),
            $"{known.Code} is a holder for {known.Format} with the sides "
                + $"{string.Join("/", known.Sides.Select(side => side.Name))}; "
            + "give the other one a name of its own");
        return known;
    }

    private static string Name(string name, string what)
    {
        var trimmed = Require.Name(name, what);
        Require.That(
            trimmed.All(c => char.IsLetterOrDigit(c) || c is '-' or '_' or '.'),
            $"the name of {what} may hold letters, digits, dots and dashes only");
        return trimmed;
    }
}
