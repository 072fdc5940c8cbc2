using Ledger.Core.Baths;

namespace Ledger.Core.Journal;

/// <summary>A bath and what was learned about it, kept together.</summary>
internal static class BathLog
{
    public static Bath With(Bath bath, BathFact fact, LocalDate date) => fact switch
    {
        ClearingTested test => bath with
        {
            ClearingTests =
            [
                .. bath.ClearingTests,
                new(date, test.Film, test.Tenths, test.IsFresh, bath.WorkedWeighted, test.FreshTenths),
            ],
        },
        BathObserved seen => bath with { Observations = [.. bath.Observations, new(date, seen.Sign, seen.EndsUse)] },
        SilverMeasured silver => bath with { SilverReadings = [.. bath.SilverReadings,
            new(date, silver.MilligramsPerLitre)] },
        ResidualTested residual => bath with { ResidualTests = [.. bath.ResidualTests, residual.Test] },
        ControlStripDeveloped developed => bath with { ControlStrips = [.. bath.ControlStrips, developed.Strip] },
        BathStands stands => bath with { Standings = [.. bath.Standings, new(date, stands.Container)] },
        BathToppedUp topped =>
            bath with { TopUps = [.. bath.TopUps, new(date, topped.Added, topped.Bled, bath.WorkedWeighted)] },
        _ => throw new ArgumentException($"no bath keeps a {fact.GetType().Name}", nameof(fact)),
    };
}
