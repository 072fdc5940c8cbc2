using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.Terminal.Forms;

/// <summary>One line of a session on the form: sheets of one film, group and fate.</summary>
internal sealed class SessionLineFields
{
    public SessionLineFields(Func<IEnumerable<string>> films)
    {
        Film = new("Film", 11, FieldKind.Choice) { Choices = films, Hint = "Up and Down choose; a beginning is enough." };
        Rows = [[Film, Sheets, Group, Developer, Fate]];
    }

    public FormField Film { get; }

    public FormField Sheets { get; } = new("sheets", 5, FieldKind.Figure) { Hint = "F3 adds four sheets." };

    public FormField Group { get; } = new("group", 4, FieldKind.Choice)
    {
        Choices = () => ["N", "N-1", "N-2", "N+1", "N+2"],
        Hint = "The development group: N, N+1, N-1...",
    };

    public FormField Developer { get; } = new("dev. ml", 7, FieldKind.Figure)
    {
        Hint = "Concentrate for this batch; empty on every line: what the process asks.",
    };

    public FormField Fate { get; } = new("became", 8, FieldKind.Choice)
    {
        Choices = () => Fates.Names,
        Hint = "What became of the sheets.",
    };

    public FormField From { get; } = new("from", 56) { Hint = "Holder sides, a box of exposed sheets, or sheets by number." };

    /// <summary>The fields in order, row by row; where known sheets come from has a row of its own.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows { get; private set; }

    /// <summary>All of them.</summary>
    public IEnumerable<FormField> Fields => Rows.SelectMany(row => row);

    /// <summary>Whether nothing says that sheets were developed here.</summary>
    public bool IsBlank => Sheets.IsEmpty && Developer.IsEmpty;

    /// <summary>Says where the sheets come from.</summary>
    public void OfferFrom(string from)
    {
        From.Offer(from);
        Rows = [.. Rows, [From]];
    }

    /// <summary>So many sheets more.</summary>
    public void Add(int sheets) => Sheets.Turn(Sheets.IsEmpty ? AsZero(sheets) : sheets);

    /// <summary>The line as the journal takes it.</summary>
    public SessionLine Read(Answers answers) => new()
    {
        Item = answers.Needed(Film),
        Sheets = answers.Whole(Sheets),
        Group = Group.Text,
        Developer = answers.Volume(Developer),
        From = Answers.Optional(From),
        Fate = (Fate)answers.OneOf(Fate, Fates.Names),
    };

    private int AsZero(int sheets)
    {
        Sheets.Type("0");
        return sheets;
    }
}
