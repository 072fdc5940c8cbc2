namespace Ledger.Terminal.Forms;

/// <summary>A field that is answered with yes or no.</summary>
internal static class YesNoField
{
    /// <summary>The field; no until the user says yes.</summary>
    public static FormField Field(string label, string hint)
    {
        var field = new FormField(label, 4, FieldKind.Choice) { Choices = () => ["no", "yes"], Hint = hint };
        field.Offer("no");
        return field;
    }

    /// <summary>What unlikely entries are asked.</summary>
    public static FormField Anyway() => Field("Anyway", "Yes when it is so, although it is asked about as unlikely.");

    /// <summary>The answer.</summary>
    public static bool IsYes(this Answers answers, FormField field) => answers.OneOf(field, ["no", "yes"]) == 1;
}
