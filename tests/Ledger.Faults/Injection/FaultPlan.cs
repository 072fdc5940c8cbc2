namespace Ledger.Faults.Injection;

/// <summary>
/// Which faults a scenario is tried with: each kind at each call where it can strike, and kills at random moments.
/// </summary>
internal static class FaultPlan
{
    private static readonly string[] _needRoom = ["create", "write", "copy", "reserve", "rename", "link", "folder"];

    /// <summary>The faults, thinned out evenly where there are more than wanted.</summary>
    /// <param name="calls">The calls of a run without fault, in their order.</param>
    /// <param name="isOfInterest">At which of them something is to go wrong.</param>
    /// <param name="lasted">How long that run took.</param>
    /// <param name="most">How many faults at calls are wanted at most.</param>
    /// <param name="moments">How many kills at random moments.</param>
    /// <param name="random">Where the moments come from.</param>
    public static IReadOnlyList<Fault> Of(
        IReadOnlyList<string> calls, Func<string, bool> isOfInterest, TimeSpan lasted, int most,
        int moments, Random random)
    {
        var all = calls.SelectMany((call,
            i) => (isOfInterest(call) ? Kinds(call) : []).Select(kind => new Fault(kind, i + 1, call))).ToList();
        var kept = all.Count <= most
            ? all
            : [.. Enumerable.Range(0, most).Select(i => all[(int)((long)i * all.Count / most)])];
        return [.. kept,
            .. Enumerable.Range(0, moments)
                .Select(_ => new Fault(FaultKind.Moment, random.NextInt64((long)lasted.TotalMicroseconds), ""))];
    }

    private static IEnumerable<FaultKind> Kinds(string call)
    {
        var name = call.Split(' ')[0];
        yield return FaultKind.Kill;
        yield return FaultKind.Torn;
        yield return FaultKind.Eio;
        if (_needRoom.Contains(name))
            yield return FaultKind.Full;
        if (name is "write" or "copy")
            yield return FaultKind.Half;
    }
}
