using Ledger.Core.Film;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Sessions;

namespace Ledger.Terminal.Forms;

/// <summary>One line of a session on the form: sheets of one film, group and fate.</summary>
/// <param name="films">The films that can be chosen.</param>
/// <param name="sources">Where known sheets can come from.</param>
/// <param name="boxes">The boxes that counted sheets can come from.</param>
internal sealed class SessionLineFields(Func<IEnumerable<string>> films, Func<IEnumerable<string>> sources, Func<IEnumerable<string>> boxes)
{
    public FormField Film { get; } = new("Film", 11, FieldKind.Choice)
    {
        Choices = films,
        Hint = "Up and Down choose; a beginning is enough.",
    };

    public FormField Sheets { get; } = new("sheets", 4, FieldKind.Figure) { Hint = "F3 adds four sheets." };

    public FormField Group { get; } = new("group", 4, FieldKind.Choice)
    {
        Choices = () => ["N", "N-1", "N-2", "N+1", "N+2"],
        Hint = "The development group: N, N+1, N-1...",
    };

    public FormField Developer { get; } = new("dev. ml", 6, FieldKind.Figure)
    {
        Hint = "Concentrate, or weighed: 31.2g. Empty on every line: what the process asks.",
    };

    public FormField Fate { get; } = new("became", 9, FieldKind.Choice)
    {
        Choices = () => Fates.Names,
        Hint = "What became of the sheets.",
    };

    public FormField From { get; } = new("from", 24)
    {
        Choices = sources, Hint = "Sides E07-1,E07-2, an exposed box fen80 N, or #12; empty: only counted.",
    };

    public FormField Cause { get; } = new("spoiled by", 16, FieldKind.Choice)
    {
        Choices = () => RejectCauses.Names, Hint = "For a reject: what spoiled it.",
    };

    public FormField Box { get; } = new("box", 14, FieldKind.Choice)
    {
        Choices = boxes, Hint = "The box that counted sheets came out of; empty for the first in reach.",
    };

    public FormField Note { get; } = new("note", 40) { Hint = "Of these sheets." };

    /// <summary>Whether the line says which sheets they were.</summary>
    public bool IsKnown { get; set; }

    /// <summary>The fields row by row.</summary>
    public IReadOnlyList<IReadOnlyList<FormField>> Rows =>
        IsKnown ? [[Film, Sheets, Group, Developer, Fate], [From, Cause], [Box, Note]] : [[Film, Sheets, Group, Developer, Fate]];

    /// <summary>The fields in order.</summary>
    public IEnumerable<FormField> Fields => Rows.SelectMany(row => row);

    /// <summary>Whether nothing says that sheets were developed here.</summary>
    public bool IsBlank => Sheets.IsEmpty && Developer.IsEmpty;

    /// <summary>So many sheets more.</summary>
    public void Add(int sheets) => Sheets.Turn(Sheets.IsEmpty ? AsZero(sheets) : sheets);

    /// <summary>The line as the journal takes it.</summary>
    public SessionLine Read(Answers answers) => new()
    {
        Item = answers.Needed(Film),
        Sheets = answers.Whole(Sheets),
        Group = Group.Text,
        Developer = IsWeighed ? null : answers.Volume(Developer),
        DeveloperWeight = IsWeighed ? answers.Weight(Developer) : null,
        Fate = (Fate)answers.OneOf(Fate, Fates.Names),
        From = IsKnown ? Answers.Optional(From) : null,
        Container = IsKnown ? Answers.Optional(Box) : null,
        Note = IsKnown ? Note.Text.Trim() : "",
        Cause = !IsKnown || Cause.IsEmpty ? null : (RejectCause)answers.OneOf(Cause, RejectCauses.Names),
    };

    /// <summary>Whether it stands for two sheets at least.</summary>
    public bool CanSplit => TypedNumber.Parse(Sheets.Text) >= 2;

    private bool IsWeighed => Developer.Text.Trim().EndsWith('g');

    /// <summary>Gives its last sheet to another line, which went through the trays with it and so measures out no developer.</summary>
    public void SplitTo(SessionLineFields apart)
    {
        var names = From.Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var isByName = IsKnown && names.Length > 1 && names.Length == TypedNumber.Parse(Sheets.Text);
        apart.Film.Offer(Film.Text);
        apart.Group.Offer(Group.Text);
        apart.Sheets.Type("1");
        apart.Fate.Offer(Fate.Text);
        apart.From.Offer(isByName ? names[^1] : From.Text);
        apart.IsKnown = IsKnown;
        Sheets.Turn(-1);
        if (isByName)
            From.Type(string.Join(", ", names[..^1]));
    }

    private int AsZero(int sheets)
    {
        Sheets.Type("0");
        return sheets;
    }
}
