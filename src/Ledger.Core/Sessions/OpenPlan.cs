namespace Ledger.Core.Sessions;

/// <summary>A session or a trip that is planned for a day, so that what it will use can be counted on.</summary>
/// <param name="Name">Its name.</param>
/// <param name="On">The day it is planned for.</param>
/// <param name="IsTrip">Whether film is taken along to be exposed; otherwise it is developed on that day.</param>
/// <param name="Request">What will be used.</param>
/// <param name="MadeOn">The day on which it was planned.</param>
/// <param name="Note">The user's note.</param>
public sealed record OpenPlan(string Name, LocalDate On, bool IsTrip, PlanRequest Request,
    LocalDate MadeOn, string Note)
{
    /// <summary>All sheets and rolls.</summary>
    public long Sheets => Request.Sheets.Sum(line => (long)line.Count);
}
