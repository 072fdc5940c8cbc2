using Ledger.Core.Journal;
using Ledger.Core.Measures;

namespace Ledger.Terminal.Forms;

/// <summary>The field that offers a waste jug for what is poured out.</summary>
internal static class JugField
{
    /// <summary>A field with the jugs that stand there; the first one with room is offered.</summary>
    public static FormField Of(Holdings holdings)
    {
        var field = new FormField("Into jug", 10, FieldKind.Choice)
        {
            Choices = () => ["", .. holdings.Jugs.Select(jug => jug.Code)],
            Hint = "The waste jug it goes into; empty for elsewhere. Local rules say where.",
        };
        field.Offer((holdings.Jugs.FirstOrDefault(jug => jug.Room > default(Volume)) ?? holdings.Jugs.FirstOrDefault())?.Code);
        return field;
    }
}
