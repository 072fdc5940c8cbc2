using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.Core.Journal.Kinds;

/// <summary>record plan, plans.csv: a session or a trip is planned for a day, a line for each film and group.</summary>
internal static class PlanKind
{
    private static readonly Notation<bool> Trip = Notations.OneOf("session|trip",
        new Choices<bool>(("session", false), ("trip", true)));

    private static readonly Field<string> Plan = new("plan", Notations.Name("PLAN"))
    {
        Help = "a name, such as spring-coast; an open plan of this name is replaced", Example = "spring-coast",
        IsNeeded = true, IsArgument = true,
        Width = 14,
        Offer = (_, holdings) => holdings.Plan("P1") is null
            ? "P1"
            : NextName.After("P1", name => holdings.Plan(name) is not null),
    };

    private static readonly Field<LocalDate> On = new("on", Notations.Date)
    {
        Label = "for", Help = "the day it is planned for", Example = "2026-04-12", IsNeeded = true, Width = 10,
        Offer = (_, holdings) => Measures.Dates.Text(holdings.AsOf),
    };

    private static readonly Field<bool> IsTrip = new("what", Trip)
    {
        Label = "as", Option = "--as",
        Help = "session, or trip: film is taken along and nothing is developed; otherwise a session",
        Example = "session", Width = 8,
        Choices = (_, _) => Trip.Words, Offer = (_, _) => Trip.Words[0],
    };

    private static readonly Field<string> Process = new("process", Notations.Known("PROCESS"))
    {
        Help = "the process; a trip needs none", Example = "tray", Width = 16, Choices = Offered.Processes,
        Offer = (read, holdings) => Offered.Processes(read, holdings).FirstOrDefault(),
    };

    private static readonly Field<GroupTimes> Times = new(
        "minutes", Notations.Of("TIMES", GroupTimes.Read, times => times.Text, GroupTimes.Accepted))
    {
        Help = "developing times in place of the process's: 11, or 11 N-1=9 N+1=14", Example = "11 N-1=9", Width = 16,
    };

    private static readonly Field<string> Bath = new("bath", Notations.Known("BATHS"))
    {
        Help = "the bath, the first of a pair; or one of each item: F9, ST2; otherwise the only one that fits",
        Example = "F4", Width = 8,
        Choices = (read, holdings) => read.Find(Process) is { } name && holdings.Process(name) is { } process
            ? new SessionBaths(holdings, holdings.AsOf).Namings(process) : [],
    };

    private static readonly Field<int> Count = new("sheets", Notations.Whole(1, 1000))
    {
        Help = "how many sheets or rolls", Example = "8", IsNeeded = true, Width = 5,
    };

    private static readonly Field<string> Film = LineFields.Film, Group = LineFields.Group;

    private static readonly Field<string> Holder = new("holder", Notations.Known("HOLDER"))
    {
        Help = "the holder, if known: its two sides go into different batches", Example = "", Width = 4, Keyword = "in",
        Choices = (_, holdings) => holdings.Film.Names.Select(holder => holder.Code),
    };

    private static readonly Field<int> Batch = new("batch", Notations.Whole(1, 99))
    {
        Help = "the batch that they go into, 1 and on; otherwise the plan spreads them", Example = "",
        Width = 3, Keyword = "batch",
    };

    private static readonly Field<string> From = new("from", Notations.Line(500))
    {
        Help = "the very sheets: by number #12, #14, by side E07-1, or a box of exposed sheets fen80 N", Example = "",
        Width = 22, Keyword = "from",
        Choices = (read, holdings) => Offered.Exposed(holdings, read.Find(Film), read.Find(Group)),
    };

    private static readonly Field<string> Subject = new("subject", Notations.Line(200))
    {
        Help = "what is on them, if known: sheets of one subject go into different batches", Example = "mill race",
        Width = 10, Keyword = ":",
    };

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<PlannedSession>
    {
        Name = "plan",
        Caution = UsualCautions.Handling,
        File = "plans",
        Title = "Plan",
        Purpose = "Plans a session or a trip for a day, so that stock and reorder dates allow for what it will use.",
        Details =
        [
            "Nothing on the shelf changes. A plan ends with record session S23 --from-plan NAME, or with record "
                + "plan-ending NAME.",
        ],
        Example = "spring --on 2026-04-12 --process film --sheets \"8 fen80 N\" --sheets \"4 fen80 N-1\"",
        NamedBy = Plan,
        IsReplaceable = true,
        Bound =
        [
            new(Plan, entry => entry.Plan), new(On, entry => entry.On), new(IsTrip, entry => Given.Yes(entry.IsTrip)),
            new(Process, entry => Given.Text(entry.Request.Process)),
            new(Times, entry => entry.Request.Times.Text.Length == 0 ? null : entry.Request.Times),
            new(Bath, entry => entry.Request.Bath),
        ],
        Line = new LineKind<RequestedSheets>
        {
            Name = "sheets",
            Help = "what will be used, once for each film and group: how many, the film, the group",
            Bound =
            [
                new(Count, line => line.Count), new(Film, line => line.Film),
                new(Group, line => Given.Text(line.Group)), new(Holder, line => Given.Text(line.Holder)),
                new(From, line => line.From), new(Batch, line => line.Batch),
                new(Subject, line => Given.Text(line.Subject)),
            ],
            With = values => new()
            {
                Count = values.Of(Count), Film = values.Of(Film), Group = values.Find(Group) ?? "",
                Holder = values.Find(Holder) ?? "",
                From = values.Find(From), Batch = values.Maybe(Batch), Subject = values.Find(Subject) ?? "",
            },
        },
        Lines = entry => entry.Request.Sheets,
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Plan = values.Of(Plan), On = values.Of(On),
            IsTrip = values.Of(IsTrip),
            Request = new()
            {
                Process = values.Find(Process) ?? "", Times = values.Find(Times) ?? GroupTimes.None,
                Bath = values.Find(Bath),
                Sheets = values.LinesOf<RequestedSheets>(),
            },
        },
    };
}

/// <summary>record plan-ending, plan_endings.csv: a plan is given up, or a trip is over.</summary>
internal static class PlanEndingKind
{
    private static readonly Field<string> Plan = new("plan", Notations.Known("PLAN"))
    {
        Help = "the plan's name", Example = "spring-coast", IsNeeded = true, IsArgument = true, Width = 14,
        Choices = (_, holdings) => holdings.Plans.Select(plan => plan.Name),
    };

    private static readonly Field<string> Reason = SharedFields.Reason(
        "why: given up, the trip is over, rained off", "rained off", width: 40, offer: "given up",
        usual: ["given up", "the trip is over", "rained off"]);

    /// <summary>The kind.</summary>
    public static EntryKind Kind { get; } = new EntryKind<PlanEnding>
    {
        Name = "plan-ending",
        File = "plan_endings",
        Title = "End a plan",
        Purpose = "Ends a plan that is given up or a trip that is over: what it would use is no longer planned.",
        Details = ["A session that is recorded from its plan ends it by itself."],
        Example = "spring-coast --reason \"rained off\"",
        Bound = [new(Plan, entry => entry.Plan), new(Reason, entry => entry.Reason)],
        With = values => new()
        {
            Key = values.Key, Date = values.Date, Note = values.Note, Plan = values.Of(Plan),
            Reason = values.Of(Reason),
        },
    };
}
