using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Keeping;
using Ledger.Core.Measures;
using Ledger.Core.Stock;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// What is learned about a bath: clearing tests, silver strips, residual tests, what is seen, and what it stands in.
/// </summary>
internal static class BathTestRules
{
    public static void Post(ClearingTest test, Draft draft)
    {
        var bath = draft.Bath(test.Bath);
        Require.That(bath.Role == ItemRole.Fixer,
            $"bath {bath.Code} is not a fixer, so film does not clear in it; name a fixer");
        var film = draft.Item(test.Film);
        if (film.Kind != ItemKind.Film || film.IsPaper || bath.Material != BathMaterial.Film)
            throw new RefusedException(RefusalKind.WrongMaterial,
                "a clearing test needs a strip of film and a bath for film");
        var tenths = Scaled.ToBase(test.Seconds, 10);
        Require.That(tenths is > 0 and <= 72_000,
            $"the clearing time must be from 0.1 to 7200 seconds, in tenths, not {test.Seconds}");
        Require.That(test.Sheets is >= 0 and <= 10,
            $"at most 10 {film.Unit.Plural()} are cut up for a test, not {test.Sheets}");

        var time = (int)tenths!.Value;
        var fresh = test.IsFresh ? time : draft.Past.FreshClearing(film.Code, bath.Place);
        var worked = draft.Past.WorkedBy(bath.Place, test.Date) ?? bath.WorkedWeighted;
        var cleared = new ClearingTime(test.Date, film.Code, time, test.IsFresh, worked, fresh);
        draft.Add(new ClearingTested(bath.Place, film.Code, time, test.IsFresh, fresh));
        if (test.Sheets > 0)
            draft.Take(film, film.Of(test.Sheets), test.Container, Places.Discarded, booksDifference: false);
        Remark(cleared, bath, draft);
        var ratio =
            cleared.Ratio is { } times && !test.IsFresh
                ? $", {Scaled.ToText(times, 2)} times the fresh {Scaled.ToText(cleared.FreshSeconds ?? 0, 1)} s"
                : "";
        draft.Show(bath.Code, Last(bath), $"{Scaled.ToText(cleared.Seconds, 1)} s{ratio}");
        draft.Summary =
            $"{(test.IsFresh ? "fresh clearing time" : "clearing test")} of {film.Code} in {bath.Code}: "
                + $"{Scaled.ToText(cleared.Seconds, 1)} s{ratio}";
    }

    public static void Post(BathObservation seen, Draft draft)
    {
        var bath = draft.Bath(seen.Bath);
        var sign = Require.Name(seen.Sign, "what was seen");
        draft.Add(new BathObserved(bath.Place, sign, seen.EndsUse));
        if (seen.EndsUse)
            draft.Show(bath.Code, "in use", "exhausted by sight");
        draft.Summary = $"bath {bath.Code}: {sign}{(seen.EndsUse ? "; not to be used any more" : "")}";
    }

    public static void Post(SilverTest test, Draft draft)
    {
        var bath = draft.Bath(test.Bath);
        Require.That(bath.Role == ItemRole.Fixer,
            $"bath {bath.Code} is not a fixer, so silver is not measured in it; name a fixer");
        var milligrams = Scaled.ToBase(test.GramsPerLitre, 1000);
        Require.That(
            milligrams is >= 0 and <= 100_000,
            $"the silver must be from 0 to 100 g per litre, in thousandths, not {test.GramsPerLitre}");
        draft.Add(new SilverMeasured(bath.Place, (int)milligrams!.Value));
        var limit = bath.Limits.SilverMilligramsPerLitre;
        if (milligrams >= limit)
            draft.Remark(
                $"the limit is {Scaled.InUnits(limit.Value, 1000)} g per litre: bath {bath.Code} is exhausted");
        draft.Summary = $"bath {bath.Code}: {Scaled.InUnits(milligrams.Value, 1000)} g of silver per litre";
    }

    public static void Post(ResidualCheck check, Draft draft)
    {
        var bath = draft.Bath(check.Bath);
        var kind = check.LookedFor.Trim().ToLowerInvariant();
        Require.That(
            ResidualTest.Kinds.Contains(kind),
            $"a residual test looks for {string.Join(" or ", ResidualTest.Kinds)}, not \"{check.LookedFor}\"");
        var result = Require.Name(check.Result, "the result");
        var session = string.IsNullOrWhiteSpace(check.Session) ? null : check.Session.Trim();
        if (session is not null && !draft.Past.HasSession(session))
            throw new RefusedException(RefusalKind.Unknown,
                $"there is no session {session} in the journal; `show sessions` lists them");
        var test = new ResidualTest(check.Date, kind, result, HasPassed(check, kind, result, draft), session);
        draft.Add(new ResidualTested(bath.Place, test));
        if (test.Ends(bath.Role))
            draft.Show(bath.Code, "in use", "exhausted by test");
        draft.Summary = $"residual {kind}{(session is null ? "" : $" in {session}")}, bath {bath.Code}: {result}, "
            + (test.HasPassed ? "passed" : "failed");
    }

    public static void Post(IndicatorReading look, Draft draft)
    {
        var bath = draft.Bath(look.Bath);
        var colour = Require.Name(look.Colour, "the colour");
        Require.That(
            bath.Indicator is not null,
            $"no indicator is set for {bath.Item}: `record item {bath.Item} --indicator COLOUR` says when it is "
                + "exhausted");
        var isExhausted = colour.Equals(bath.Indicator, StringComparison.OrdinalIgnoreCase);
        draft.Add(new BathObserved(bath.Place, $"its indicator is {colour}", isExhausted));
        if (isExhausted)
            draft.Show(bath.Code, "in use", "exhausted by sight");
        else
            draft.Remark($"bath {bath.Code} can still be used; it is exhausted when its indicator is {bath.Indicator}");
        draft.Summary =
            $"bath {bath.Code}: its indicator is {colour}{(isExhausted ? "; not to be used any more" : "")}";
    }

    public static void Post(ControlStripTest strip, Draft draft)
    {
        var bath = draft.Bath(strip.Bath);
        Require.That(bath.Role == ItemRole.Developer,
            $"bath {bath.Code} is not a developer, so a control strip is not developed in it; name a developer");
        var result = Require.Name(strip.Result, "the result");
        draft.Add(new ControlStripDeveloped(bath.Place, new(strip.Date, result, strip.IsWithinLimits)));
        if (!strip.IsWithinLimits)
            draft.Remark(
                $"bath {bath.Code} is out of your limits: replenish it or mix a fresh one, then develop another strip");
        draft.Summary =
            $"control strip in {bath.Code}: {result}, {(strip.IsWithinLimits ? "within limits" : "out of limits")}";
    }

    public static void Post(BathStorage storage, Draft draft)
    {
        var bath = draft.Bath(storage.Bath);
        var before = bath.Standings is [.., var last] ? last.Container : WorkingContainer.FullBottle;
        Require.That(before != storage.Container, $"bath {bath.Code} stands in a {before.Name()} already");
        draft.Add(new BathStands(bath.Place, storage.Container));
        var after = bath with { Standings = [.. bath.Standings, new(storage.Date, storage.Container)] };
        draft.Show(bath.Code, Until(before, bath, draft), Until(storage.Container, after, draft));
        draft.Summary = $"bath {bath.Code} stands in a {storage.Container.Name()}";
    }

    /// <summary>The user says whether it was good enough; a figure above their limit has failed all the same.</summary>
    private static bool HasPassed(ResidualCheck check, string kind, string result, Draft draft)
    {
        if (kind != ResidualTest.Hypo || draft.Holdings.Settings.ResidualHypoLimit is not { } limit)
            return check.HasPassed;
        var most = $"your limit is {Scaled.InUnits(limit, 1000)} g per square metre";
        if (ResidualTest.MilligramsPerSquareMetre(result) is not { } found)
        {
            draft.Remark(
                $"{most}; the result was not compared with it, because it does not begin with a figure such as 0.014 "
                    + "g/m2");
            return check.HasPassed;
        }

        draft.Remark($"{most}: {(found <= limit ? "not above it" : "above it")}");
        return check.HasPassed && found <= limit;
    }

    private static void Remark(ClearingTime cleared, Bath bath, Draft draft)
    {
        if (cleared.FreshTenths is null)
            draft.Remark(
                $"no fresh clearing time of {cleared.Film} in {bath.Item} is recorded, so this one cannot be judged");
        if (cleared.IsFresh && cleared.Worked > Area.Zero)
            draft.Remark(
                $"{cleared.Worked.ToText(draft.Style)} of film had gone through bath {bath.Code} by then; a fresh time "
                    + "is measured before that");
        if (!cleared.IsFresh && cleared.IsExhaustedAt(bath.Limits.ExhaustedMultipleThousandths))
            draft.Remark(
                $"that is {Scaled.InUnits(bath.Limits.ExhaustedMultipleThousandths, 1000)} times the fresh time or "
                    + "more: "
                + $"bath {bath.Code} is exhausted");
        draft.Remark(
            $"fix {cleared.Film} for "
                + $"{Scaled.ToText(cleared.FixingTenths(bath.Limits.FixingMultipleThousandths) / 10m, 1)} s at least, "
                + $"{Scaled.InUnits(bath.Limits.FixingMultipleThousandths, 1000)} times its clearing time");
    }

    private static string Last(Bath bath) =>
        bath.ClearingTests is [.., var last] ? $"{Scaled.ToText(last.Seconds, 1)} s" : "no test";

    private static string Until(WorkingContainer container, Bath bath, Draft draft) =>
        $"{container.Name()}, "
        + $"{(new BathReading(bath, draft.Date).GoodUntil is { } good
            ? $"good until {Dates.Text(good.Date)}" : "no limit")}";
}
