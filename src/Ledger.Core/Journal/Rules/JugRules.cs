using Ledger.Core.Baths;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Measures;

namespace Ledger.Core.Journal.Rules;

/// <summary>
/// Waste jugs: started, filled, handed over. The ledger keeps count; what may go where is not for it to say.
/// </summary>
internal static class JugRules
{
    private const string Caution =
        "the maker's safety data sheet and local rules say which place may take it; used fixer holds silver";

    public static void Post(JugStart start, Draft draft)
    {
        var code = Require.Name(start.Jug, "a jug");
        Require.That(start.Size > default(Volume),
            $"the size of {code} must be more than nothing; say it, such as 5000ml");
        if (draft.Holdings.Jug(code) is not null)
            throw new RefusedException(RefusalKind.AlreadyThere,
                $"jug {code} is in use already; hand it over first or give this one another name");
        var contents = Require.Name(start.Contents, $"what goes into {code}");
        draft.Add(new JugStarted(new(draft.NewPlace(), code, contents, start.Size, start.Date)));
        draft.Show(code, "-", $"empty, {start.Size.ToText(draft.Style)}");
        draft.Summary = $"started jug {code} for {contents}, {start.Size.ToText(draft.Style)}";
    }

    public static void Post(JugFilling filling, Draft draft)
    {
        Require.That(filling.Volume > default(Volume), "the volume must be more than nothing; say it, such as 1500ml");
        var jug = draft.Jug(filling.Jug);
        var what = Require.Name(filling.What, "what goes into the jug");
        Fill(jug, filling.Volume, what, null, WasteKinds.Told(what), draft);
        draft.Summary = $"{filling.Volume.ToText(draft.Style)} of {what} into jug {jug.Code}";
    }

    public static void Post(JugHandover handover, Draft draft)
    {
        var jug = draft.Jug(handover.Jug);
        var to = Require.Name(handover.To, "where the jug goes");
        draft.Add(new JugHandedOver(jug.Place, jug.Code, to));
        draft.Show(jug.Code, jug.Held.ToText(draft.Style), "handed over");
        draft.Remark(Caution);
        draft.Summary = $"handed over jug {jug.Code} with {jug.Held.ToText(draft.Style)} of {jug.Contents}: {to}";
    }

    /// <param name="jug">The jug.</param>
    /// <param name="volume">How much goes into it.</param>
    /// <param name="what">What it is, in words.</param>
    /// <param name="material">What had passed through it; null when it is no bath.</param>
    /// <param name="waste">Its kind of waste; null when that is not known.</param>
    /// <param name="draft">What is written.</param>
    public static void Fill(WasteJug jug, Volume volume, string what, BathMaterial? material,
        WasteKind? waste, Draft draft)
    {
        foreach (var doubt in WasteMixing.Doubts(jug, what, waste))
            draft.Doubt(doubt);
        draft.Add(new JugFilled(jug.Place, volume, what, material));
        draft.Show(jug.Code, jug.Held.ToText(draft.Style), (jug.Held + volume).ToText(draft.Style));
        if (volume > jug.Room)
            draft.Remark(
                $"jug {jug.Code} holds {jug.Size.ToText(draft.Style)} when full and would run over: "
                    + $"{jug.Room.ToText(draft.Style)} fit in");
    }
}
