using Ledger.Core.Sessions;

namespace Ledger.Terminal.Forms;

/// <summary>One line of a plan on the form: sheets of one film and group, and what is known of them.</summary>
/// <param name="films">The films that can be chosen.</param>
internal sealed class PlanLineFields(Func<IEnumerable<string>> films)
{
    public FormField Film { get; } = new("Film", 11, FieldKind.Choice) { Choices = films, Hint = "Up and Down choose; a beginning is enough." };

    public FormField Sheets { get; } = new("sheets", 5, FieldKind.Figure) { Hint = "F3 adds four sheets." };

    public FormField Group { get; } = new("group", 4, FieldKind.Choice)
    {
        Choices = () => ["N", "N-1", "N-2", "N+1", "N+2"], Hint = "The development group: N, N+1, N-1...",
    };

    public FormField Holder { get; } = new("holder", 4) { Hint = "The holder, if known: its two sides go into different batches." };

    public FormField Subject { get; } = new("subject", 10) { Hint = "What is on them, if known: sheets of one subject go into different batches." };

    public FormField From { get; } = new("from", 22) { Hint = "The very sheets: by number #12, #14, by side E07-1, or a box fen80 N." };

    /// <summary>Whether the line says which sheets they are; their holders and subjects are known then.</summary>
    public bool IsKnown { get; private set; }

    /// <summary>The fields in order.</summary>
    public IReadOnlyList<FormField> Fields => IsKnown ? [Film, Sheets, Group, From] : [Film, Sheets, Group, Holder, Subject];

    /// <summary>Shows what was planned.</summary>
    public void Offer(RequestedSheets line)
    {
        Film.Offer(line.Film);
        Sheets.Offer(line.Count.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Group.Offer(line.Group);
        Holder.Offer(line.Holder);
        Subject.Offer(line.Subject);
        From.Offer(line.From);
        IsKnown = !From.IsEmpty;
    }

    /// <summary>So many sheets more.</summary>
    public void Add(int sheets)
    {
        if (Sheets.IsEmpty)
            Sheets.Type("0");
        Sheets.Turn(sheets);
    }

    /// <summary>The line as a plan takes it.</summary>
    public RequestedSheets Read(Answers answers) => new()
    {
        Film = answers.Needed(Film),
        Count = answers.Whole(Sheets),
        Group = Group.Text.Trim(),
        Holder = Holder.Text.Trim(),
        Subject = Subject.Text.Trim(),
        From = IsKnown ? Answers.Optional(From) : null,
    };
}
