using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>Plans: kept with a day, ended by the session that realises them or by the user.</summary>
internal static class PlanRules
{
    private const int MostSheets = 1000;

    public static void Post(PlannedSession planned, Draft draft)
    {
        var name = Require.Name(planned.Plan, "a plan");
        Require.That(planned.On >= planned.Date,
            $"{name} is planned for {Dates.Text(planned.On)}, before {Dates.Text(planned.Date)}; plan it for that day "
                + "or later");
        Require.That(planned.On <= planned.Date.PlusYears(10),
            $"{Dates.Text(planned.On)} is too far away; plans reach ten years ahead");
        Require.That(planned.Request.Sheets.Count > 0, "a plan needs at least one line of sheets");
        foreach (var line in planned.Request.Sheets)
            Check(line, draft);
        var process = planned.Request.Process.Trim();
        Require.That(process.Length > 0 || planned.IsTrip, "a session needs a process; only a trip can do without");
        if (process.Length > 0 && draft.Holdings.Process(process) is null)
            throw RefusedException.Unknown($"process \"{process}\"",
                draft.Holdings.Processes.Select(known => known.Name));
        if (draft.Holdings.Plan(name) is { } before)
            draft.Remark($"it takes the place of the plan {before.Name} for {Dates.Text(before.On)}");
        var plan = new OpenPlan(name, planned.On, planned.IsTrip, planned.Request with { Process = process },
            planned.Date, planned.Note);
        draft.Add(new PlanMade(plan));
        draft.Summary =
            $"planned {(planned.IsTrip ? "trip" : "session")} {name} for {Dates.Text(plan.On)}: {SheetsOf(plan)}";
    }

    public static void Post(PlanEnding ending, Draft draft)
    {
        var reason = Require.Reason(ending.Reason);
        var plan = Plan(ending.Plan, draft);
        draft.Add(new PlanEnded(plan.Name, reason));
        draft.Summary = $"the plan {plan.Name} for {Dates.Text(plan.On)} is ended: {reason}";
    }

    /// <summary>A session that was planned ends its plan.</summary>
    public static void Realise(SessionLog session, Draft draft)
    {
        if (session.Plan is not { Length: > 0 } name)
            return;
        var plan = Plan(name, draft);
        Require.That(!plan.IsTrip,
            $"{plan.Name} is a trip; end it with `record plan-ending`, and plan the session that develops its film");
        draft.Add(new PlanEnded(plan.Name, $"session {session.Session.Trim()}"));
    }

    private static void Check(RequestedSheets line, Draft draft)
    {
        var film = draft.Item(line.Film);
        Require.That(film.Kind == ItemKind.Film,
            $"{film.Code} is a {film.Kind.Name()} and cannot be developed; name a film");
        Require.That(
            line.Count is > 0 and <= MostSheets,
            $"the {film.Unit.Plural()} of {film.Code} must be from 1 to {MostSheets}, not {line.Count}");
        foreach (var text in new[] { line.Group, line.Subject, line.Holder })
            Require.That(text.Length <= 200 && !text.Any(char.IsControl),
                "a group, subject or holder has at most 200 characters that can be printed");
    }

    private static OpenPlan Plan(string name, Draft draft) => draft.Holdings.Plan(name) ?? throw new RefusedException(
        RefusalKind.Unknown,
        $"there is no plan \"{name.Trim()}\" that is still open; "
        + (draft.Holdings.Plans.Any()
            ? $"open: {string.Join(", ", draft.Holdings.Plans.Select(plan => plan.Name).Take(12))}"
            : "none is"));

    private static string SheetsOf(OpenPlan plan) => string.Join(
        ", ", plan.Request.Sheets.GroupBy(line => line.Film, StringComparer.OrdinalIgnoreCase)
            .Select(group => $"{group.Sum(line => line.Count)} {group.Key}"));
}
