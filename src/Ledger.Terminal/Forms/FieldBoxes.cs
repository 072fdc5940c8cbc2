using Ledger.Terminal.Blocks;
using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>What the fields of an entry, or of one of its lines, are on a form.</summary>
internal sealed class FieldBoxes
{
    private readonly IReadOnlyList<Field> _fields;
    private Holdings _holdings;
    private ReadingTerms _terms;
    private readonly Dictionary<Field, FormField> _boxes = [];

    /// <param name="fields">The fields in order.</param>
    /// <param name="holdings">What they offer from.</param>
    /// <param name="terms">How they are read.</param>
    /// <param name="named">The field that names the entry: nothing is completed in it, for a name may begin like
    /// another.</param>
    public FieldBoxes(IReadOnlyList<Field> fields, Holdings holdings, ReadingTerms terms, Field? named = null)
    {
        (_fields, _holdings, _terms) = (fields, holdings, terms);
        foreach (var field in fields)
            _boxes[field] = Made(field, field == named);
    }

    /// <summary>They offer and read from now on by what the ledger holds then.</summary>
    public void Renew(Holdings holdings, ReadingTerms terms) => (_holdings, _terms) = (holdings, terms);

    /// <summary>All fields by their names.</summary>
    public IEnumerable<(string Name, FormField Box)> Named => _fields.Select(one => (one.Name, _boxes[one]));

    /// <summary>All fields in order.</summary>
    public IEnumerable<FormField> All => _fields.Select(one => _boxes[one]);

    /// <summary>What stands in them, as far as it can be read.</summary>
    public FieldValues Values => EntryReading.Known(_fields, Written(_ => true), _terms);

    /// <summary>Whether nothing stands in any of them.</summary>
    public bool AreEmpty => _boxes.Values.All(box => box.IsEmpty);

    /// <summary>The field of that name.</summary>
    public FormField this[string name] =>
        Find(name) ?? throw new ArgumentException($"there is no field {name}", nameof(name));

    /// <summary>The field of that name, or null.</summary>
    public FormField? Find(string name) =>
        _fields.FirstOrDefault(field => field.Name == name) is { } field ? _boxes[field] : null;

    /// <summary>The field on the form that a description's field is, or null.</summary>
    public FormField? Find(Field field) => _boxes.GetValueOrDefault(field);

    /// <summary>Whether the field is one of these.</summary>
    public bool Have(FormField? field) => field is not null && _boxes.ContainsValue(field);

    /// <summary>The needed field that is empty, or else any needed one that was only offered; null for none.</summary>
    public FormField? Open(bool isOffered) => _fields.Where(field => field.IsNeeded).Select(field => _boxes[field])
        .FirstOrDefault(box => isOffered ? !box.IsGiven : box.IsEmpty);

    /// <summary>The fields of several names, divided by blanks or commas, that the ledger offers.</summary>
    public IEnumerable<(FormField Box, string Divider)> Lists =>
        _fields.Where(one => one is { Notation.Divider: not null, Choices: not null })
            .Select(one => (_boxes[one], one.Notation.Divider!));

    /// <summary>What stands in those that are asked for.</summary>
    public EntryText Written(Func<Field, bool> isAsked)
    {
        var text = new EntryText();
        foreach (var (field, box) in _boxes)
            if (isAsked(field))
                text[field] = box.Text;
        return text;
    }

    /// <summary>Writes what is known into them; it stands in place of what they offer.</summary>
    public void Begin(EntryText known)
    {
        foreach (var (field, box) in _boxes)
            if (known[field] is { Length: > 0 } text)
                box.Begin(text);
    }

    /// <summary>Writes into every field that nobody has typed in what its description offers, given what stands in the
    /// others; what is offered in one may call for another in the next.</summary>
    public void Offer()
    {
        for (var rounds = 0; rounds < _fields.Count; rounds++)
        {
            var before = All.Select(box => box.Text).ToList();
            OfferOnce();
            if (before.SequenceEqual(All.Select(box => box.Text)))
                return;
        }
    }

    private void OfferOnce()
    {
        foreach (var field in _fields)
            if (field.Offer is { } offer && _boxes[field] is { IsTouched: false, IsGiven: false } box)
            {
                var values = Values;
                box.Offer(offer(values, _holdings) is { Length: > 0 } text ? InUnits(field, text, values) : null);
            }
    }

    /// <summary>Offers a text in one of them, as the user measures, in place of what its description offers.</summary>
    public void Offer(string name, string? text)
    {
        var field = _fields.First(field => field.Name == name);
        _boxes[field].Offer(text is { Length: > 0 } ? InUnits(field, text, Values) : null);
    }

    /// <summary>
    /// A figure as the user measures: what is offered in millilitres stands in fluid ounces where those are chosen.
    /// </summary>
    private string InUnits(Field field, string text, FieldValues values) =>
        field.Notation.Shape == Shape.Number && char.IsAsciiLetter(text[^1])
            ? field.Rewritten(text, values, _terms)
            : text;

    private FormField Made(Field field, bool isName) =>
        new(Label(field), field.Width, isName ? FieldKind.Text : KindOf(field))
        {
            Hint = ScreenText.Sentence(field.Help),
            Today = _terms.Today,
            Choices = () => Choices(field),
            NoteOf = name => ChoiceNotes.Of(name, _holdings),
            IsNeeded = field.IsNeeded,
            Makes = isName || field.Choices is null ? null : Makers.Of(field),
        };

    /// <summary>What can be chosen; nothing too where nothing must be.</summary>
    private IEnumerable<string> Choices(Field field)
    {
        var choices = field.Choices?.Invoke(Values, _holdings) ?? field.Notation.Words;
        return field.IsNeeded || field.Notation.Words.Count > 0 || field.Notation.Shape != Shape.Choice
            ? choices
            : choices.Prepend("");
    }

    private string Label(Field field) => !_terms.Style.UsesFluidOunces ? field.Label
        : field.Label.EndsWith(" ml", StringComparison.Ordinal) ? $"{field.Label[..^2]}fl oz" : field.Label;

    private static FieldKind KindOf(Field field) => field.Notation switch
    {
        { Shape: Shape.Number } => FieldKind.Figure,
        { Shape: Shape.Date } => FieldKind.Date,
        { Shape: Shape.Tick } => FieldKind.Tick,
        { Shape: Shape.Choice } => FieldKind.Choice,
        { Divider: null } when field.Choices is not null => FieldKind.Choice,
        _ => FieldKind.Text,
    };
}
