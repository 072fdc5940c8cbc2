using System.Buffers;

namespace Ledger.Terminal.Pages;

/// <summary>A field of a form: what was typed, kept as it was typed, and what can be offered in its place.</summary>
/// <param name="label">Its label.</param>
/// <param name="width">How many columns it takes on the screen.</param>
/// <param name="kind">What it accepts.</param>
internal sealed class FormField(string label, int width, FieldKind kind = FieldKind.Text)
{
    private static readonly SearchValues<char> _ofNumbers = SearchValues.Create("0123456789.,-+ ");

    private const string Ticked = "yes";
    private string _filter = "";

    /// <summary>Its label.</summary>
    public string Label => label;

    /// <summary>How many columns it takes on the screen.</summary>
    public int Width => width;

    /// <summary>What it accepts.</summary>
    public FieldKind Kind => kind;

    /// <summary>A sentence that is shown while the field has the cursor.</summary>
    public string Hint { get; init; } = "";

    /// <summary>What can be chosen; empty when anything can be typed.</summary>
    public Func<IEnumerable<string>> Choices { get; init; } = () => [];

    /// <summary>What a person needs to know of a choice.</summary>
    public Func<string, string> NoteOf { get; init; } = _ => "";

    /// <summary>
    /// The choices that what was typed fits, those that begin so first; all of them while nothing was typed.
    /// </summary>
    public IReadOnlyList<string> Fitting()
    {
        var choices = Choices().ToList();
        return _filter.Length == 0 ? choices
            : [.. choices.Where(choice => choice.Contains(_filter, StringComparison.OrdinalIgnoreCase))
                .OrderBy(choice => !choice.StartsWith(_filter, StringComparison.OrdinalIgnoreCase))];
    }

    /// <summary>What was typed chooses no longer; the cursor left the field.</summary>
    public void Unfilter() => _filter = "";

    /// <summary>What stands in it.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Whether the user has changed it, so that nothing is suggested over it.</summary>
    public bool IsTouched { get; private set; }

    /// <summary>
    /// Whether what it is about was written in it when the form opened, so that nothing else is offered.
    /// </summary>
    public bool IsGiven { get; private set; }

    /// <summary>
    /// What sort of thing it names that a form can make: item, jug, holder; null for nothing of the kind.
    /// </summary>
    public string? Makes { get; init; }

    /// <summary>Whether something must be named in it.</summary>
    public bool IsNeeded { get; init; }

    /// <summary>
    /// Whether it names something that is not among what is known, and that a form can make: what the user wrote, or
    /// was asked for where there is nothing to choose. What an entry that is amended said already is not in question.
    /// </summary>
    public bool IsUnknown => Makes is not null && (IsEmpty ? IsNeeded && !Choices().Any(choice => choice.Length > 0)
        : Kind == FieldKind.Choice && (IsTouched || IsGiven)
            && !Choices().Contains(Text.Trim(), StringComparer.OrdinalIgnoreCase));

    /// <summary>The day that relative dates are seen from.</summary>
    public LocalDate Today { get; init; }

    /// <summary>Whether a tick field is ticked.</summary>
    public bool IsTicked => Text == Ticked;

    /// <summary>Whether nothing stands in it.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text);

    /// <summary>The user's change.</summary>
    public void Type(string text)
    {
        Text = Kept(text);
        IsTouched = true;
        _filter = Text.Trim();
    }

    /// <summary>Puts back what stood in it, and how it came there.</summary>
    public void Put(string text, bool isTouched, bool isGiven) =>
        (Text, IsTouched, IsGiven) = (text, isTouched, isGiven);

    /// <summary>Ticks it, or takes the tick away.</summary>
    public void Tick() => Type(IsTicked ? "" : Ticked);

    /// <summary>Writes what it is about, unless the user has put something there.</summary>
    public void Begin(string? text)
    {
        Offer(text);
        IsGiven = true;
    }

    /// <summary>Offers a value, unless the user has put one there.</summary>
    public void Offer(string? text)
    {
        if (!IsTouched)
            Text = Kept(text ?? "");
    }

    /// <summary>The next or the last choice; a day later or earlier; one more or one less.</summary>
    public void Turn(int by)
    {
        if (kind == FieldKind.Date)
        {
            if (Dates.ParseTyped(Text, Today) is { } date)
                Type(Dates.Text(date.PlusDays(by)));
        }
        else if (kind == FieldKind.Figure)
        {
            if (Figure is { } figure && figure + by >= 0)
                Type(Scaled.ToText(figure + by, 6) + Text[FigureLength..]);
        }
        else
            Choose(by);
    }

    /// <summary>Finishes a beginning that only one choice has.</summary>
    public void Complete()
    {
        if (IsEmpty || kind != FieldKind.Choice)
            return;
        var fitting = Choices().Where(choice => choice.StartsWith(Text.Trim(), StringComparison.OrdinalIgnoreCase))
            .ToList();
        if (fitting.Count == 1 || fitting.Any(choice => choice.Equals(Text.Trim(), StringComparison.OrdinalIgnoreCase)))
            Text = fitting.Count == 1 ? fitting[0] : Text.Trim();
    }

    /// <summary>The number that stands in it, without its unit; null when none does.</summary>
    public decimal? Figure => Numbers.Read(Text[..FigureLength], out _);

    private int FigureLength => Text.AsSpan().IndexOfAnyExcept(_ofNumbers) is >= 0 and var at
        ? Text.AsSpan(0, at).TrimEnd().Length
        : Text.Length;

    /// <summary>A tick that says no is none.</summary>
    private string Kept(string text) => kind == FieldKind.Tick && text == "no" ? "" : text;

    private void Choose(int by)
    {
        var filter = _filter;
        var choices = Fitting().ToList();
        // What was typed whole is one of all that can be chosen; what fits nothing gives way to them too.
        if (choices.Count == 0
            || (choices.Count == 1 && choices[0].Equals(Text.Trim(), StringComparison.OrdinalIgnoreCase)))
            (choices, filter) = ([.. Choices()], "");
        if (choices.Count == 0)
            return;
        var at = choices.FindIndex(choice => choice.Equals(Text.Trim(), StringComparison.OrdinalIgnoreCase));
        Type(at < 0 ? choices[by > 0 ? 0 : ^1] : choices[(at + by + choices.Count) % choices.Count]);
        _filter = filter;
    }
}

/// <summary>What a field accepts.</summary>
internal enum FieldKind
{
    /// <summary>Anything.</summary>
    Text,

    /// <summary>One of several names; the beginning of one is enough.</summary>
    Choice,

    /// <summary>A number.</summary>
    Figure,

    /// <summary>A date.</summary>
    Date,

    /// <summary>Yes or no.</summary>
    Tick,
}
