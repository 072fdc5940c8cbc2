namespace Ledger.Core.Film;

/// <summary>
/// What the user has set for holders, sheets and negatives. The limits are common practice, each changed by a setting.
/// </summary>
/// <param name="LoadedDays">How long film may wait in a holder before a notice appears.</param>
/// <param name="ExposedDays">How long an exposed sheet may wait for its development.</param>
/// <param name="SideFaults">How many sheets a side may spoil before it is flagged.</param>
/// <param name="ForgottenMonths">After how many months without a touch a box or bottle counts as forgotten.</param>
/// <param name="ThawHours">How long film from the freezer warms up before its box is opened.</param>
/// <param name="SideNames">The names of a new holder's sides.</param>
/// <param name="SlideConvention">What the two faces of a dark slide mean to the user.</param>
/// <param name="Negatives">How negatives are numbered.</param>
public sealed record FilmSettings(
    int LoadedDays, int ExposedDays, int SideFaults, int ForgottenMonths, int ThawHours, string SideNames,
    string SlideConvention, NegativePattern Negatives)
{
    /// <summary>What a new ledger starts with.</summary>
    public static FilmSettings Default { get; } = new(
        LoadedDays: 60, ExposedDays: 30, SideFaults: 2, ForgottenMonths: 12, ThawHours: 24, SideNames: "1/2",
        SlideConvention: "white outside: not exposed; black outside: exposed", NegativePattern.Default);
}
