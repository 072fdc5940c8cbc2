namespace Ledger.App.Commands.Plan;

/// <summary>The exposed sheets that a plan takes, each by its number.</summary>
internal static class ExposedOption
{
    public static Option<ExposedPhrase[]> New() => Typed.Options(
        "--exposed", "WHAT", ExposedPhrase.Parse,
        $"exposed sheets that wait in holders and boxes: \"{ExposedPhrase.Form}\"");

    /// <summary>The lines of the sheets that are meant; a sheet that two phrases mean is taken once.</summary>
    public static IReadOnlyList<RequestedSheets> Sheets(ExposedPhrase[]? phrases, Holdings holdings)
    {
        if (phrases is not { Length: > 0 })
            return [];
        var sheets = KnownSheets.Request(
            phrases.SelectMany(phrase => KnownSheets.Exposed(holdings, phrase.Film, phrase.Group, phrase.Until)));
        return sheets.Count > 0 ? sheets : throw new RefusedByCommandException(
            "no exposed sheet like that waits for its development; `show holders` lists them");
    }
}
