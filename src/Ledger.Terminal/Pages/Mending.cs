namespace Ledger.Terminal.Pages;

/// <summary>What mends a refusal, by its kind: always a key. The form waits wherever the key leads.</summary>
internal static class Mending
{
    private const string There = "Tab and Shift+Tab lead to its field";
    private const string Others = "Up and Down in its field offer what there is";
    private const string Away = "Esc leaves, and this form waits as it is";

    /// <summary>What can be done about it, in a sentence.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="hasDifference">Whether the form can book a difference.</param>
    public static string Of(Refusal refusal, bool hasDifference) => refusal switch
    {
        { Entry: { } entry } =>
            $"Ctrl+O opens entry {entry}: {KeyTable.Amend.Letter} amends it there, {KeyTable.Undo.Letter} takes it "
                + "back; this form waits.",
        { Kind: RefusalKind.InFuture } =>
            "Up and Down in Date change it by a day, Ctrl+D writes the day of the last entry.",
        { Kind: RefusalKind.Unknown } => $"{Others}.",
        { Kind: RefusalKind.AlreadyThere } => $"{There}: give it another name.",
        { Kind: RefusalKind.MoreThanHeld } when hasDifference =>
            $"F6 books the difference; or take less: {There}.",
        { Kind: RefusalKind.MoreThanHeld } =>
            $"{There}: take less. {Away}; {KeyTable.Count.Letter} on {MainDigits.To("Shelf")} counts what is really "
                + "there.",
        { Kind: RefusalKind.WrongMaterial } => $"{Others}.",
        { Kind: RefusalKind.DependedOn } => $"{Away}; {MainDigits.To("Journal")} has what came later.",
        { Kind: RefusalKind.Occupied } =>
            $"{Others}. {Away}; {KeyTable.Move.Letter} on {MainDigits.To("Holders")} takes the sheet out.",
        { Kind: RefusalKind.Empty } =>
            $"{Others}. {Away}; {KeyTable.Load.Letter} on {MainDigits.To("Holders")} loads it.",
        { Kind: RefusalKind.Doubtful } => $"F6 says that it is so. {There}.",
        _ => $"{There}; F1 says what the form asks.",
    };
}
