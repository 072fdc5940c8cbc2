using Ledger.Core.Journal;
using Ledger.Core.Sessions;
using Ledger.Core.Stock;

namespace Ledger.Core.Planning;

/// <summary>
/// Plans a session from what is asked for and what is on the shelf. Pure: the same facts give the same plan.
/// </summary>
public static class SessionPlanning
{
    /// <summary>Plans a session.</summary>
    /// <param name="request">What is to be developed.</param>
    /// <param name="holdings">What the ledger holds.</param>
    /// <param name="day">The day of the session: what has expired by then does not count.</param>
    /// <param name="prices">What deliveries cost, by which what is short is priced; null to leave it without a
    /// price.</param>
    public static PlanDecision Of(PlanRequest request, Holdings holdings, LocalDate day, ICostRecords? prices = null)
    {
        try
        {
            return new Planned(Plan(new(request, holdings, day), prices));
        }
        catch (RefusedException refused)
        {
            return new NotPlanned(refused.Refusal);
        }
        catch (OverflowException)
        {
            return new NotPlanned(new(RefusalKind.NotAccepted, "a figure is too large to be kept exactly"));
        }
    }

    /// <summary>Plans a session for the day that the holdings stand for.</summary>
    public static PlanDecision Of(PlanRequest request, Holdings holdings) => Of(request, holdings, holdings.AsOf);

    private static SessionPlan Plan(SessionPlanDraft draft, ICostRecords? prices)
    {
        var baths = new BathOutlooks(draft.Holdings, draft.Day)
            .Of(draft.Process, draft.Request.Bath, draft.Through(weighted: false),
                draft.Through(weighted: true)).ToList();
        var planned = new PlannedUses(draft);
        var (uses, used) = (planned.Of(baths), planned.OfSession());
        return new()
        {
            Request = draft.Request,
            Day = draft.Day,
            Process = draft.Process,
            Batches = draft.Batches,
            Trays = new PlannedTrays(draft).Of(baths),
            Uses = uses,
            UsedUp = used,
            Shortages = new Shortages(draft).Of(uses),
            Baths = baths,
            HasUnknownParts = draft.UnknownParts.Count > 0,
            Cost = PlanCost.Of(draft, used, baths, prices),
            Advice = new PlanAdvice(draft).All(baths),
            Cautions = [.. UsualCautions.Sentences, .. Own(draft), UsualCautions.Governs],
        };
    }

    /// <summary>The cautions that the user took from the safety data sheets of the chemicals in use.</summary>
    private static IEnumerable<string> Own(SessionPlanDraft draft) => draft.Process.Steps
        .Select(step => step.Item is { } code ? draft.Holdings.Item(code) : null)
        .OfType<Item>()
        .DistinctBy(item => item.Code)
        .Where(item => item.Cautions.Length > 0)
        .Select(item => $"{item.Name}: {item.Cautions}");
}
