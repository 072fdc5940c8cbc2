using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>The forms that bring into being what another form names and the ledger does not know yet.</summary>
internal static class Makers
{
    /// <summary>
    /// What a field names, in a word: item, jug, process, holder, bath, order, plan, format; null where it names
    /// nothing of the kind.
    /// </summary>
    public static string? Of(Field field) => field.Notation.Placeholder switch
    {
        "ITEM" or "FILM" or "PAPER" => "item",
        "JUG" => "jug",
        "PROCESS" => "process",
        "HOLDER" or "SIDE" => "holder",
        "BATH" or "BATHS" => "bath",
        "ORDER" => "order",
        "FORMAT" => "format",
        _ => null,
    };

    /// <summary>The form that makes it.</summary>
    /// <param name="what">One of what <see cref="Of"/> gives.</param>
    /// <param name="name">What it is to be called; null where that is not known yet.</param>
    /// <param name="ledger">The ledger.</param>
    public static Form Form(string what, string? name, ILedger ledger) => what switch
    {
        "item" => new ItemForm(ledger, null, name),
        "jug" => new KindForm(ledger, "jug-start", ("jug", name)),
        "process" => new StepForm(ledger, name, null),
        "bath" => name is null ? new BathForm(ledger, null) : new KindForm(ledger, "bath", ("bath", name)),
        _ => new KindForm(ledger, what, (what, name)),
    };

    /// <summary>What an entry has brought into being.</summary>
    public static string? Made(Entry entry) => entry switch
    {
        ItemDefinition made => made.Item.Code,
        JugStart made => made.Jug,
        ProcessDefinition made => made.Process,
        HolderDefinition made => made.Holder,
        BathMixing made => made.Bath,
        OrderPlacement made => made.Order,
        FormatDefinition made => made.Format.Code,
        _ => null,
    };
}
