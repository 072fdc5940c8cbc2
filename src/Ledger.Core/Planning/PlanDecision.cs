using Ledger.Core.Journal;

namespace Ledger.Core.Planning;

/// <summary>Whether a request could be planned.</summary>
public abstract record PlanDecision;

/// <summary>It could; what is short is told in the plan.</summary>
/// <param name="Plan">The plan.</param>
public sealed record Planned(SessionPlan Plan) : PlanDecision;

/// <summary>It could not: it names something unknown or impossible.</summary>
/// <param name="Refusal">Why.</param>
public sealed record NotPlanned(Refusal Refusal) : PlanDecision;
