using Ledger.Core.Journal;
using Ledger.Core.Journal.Entries;
using Ledger.Core.Journal.Kinds;

namespace Ledger.Terminal.Forms;

/// <summary>The form of a kind of entry, made from its description.</summary>
internal class KindForm : FormModel
{
    /// <summary>The columns that a row of fields may take; the narrowest screen has 80.</summary>
    private const int Columns = 76;

    private readonly EntryKind _kind;
    private readonly Holdings _holdings;
    private readonly Dictionary<Field, FormField> _fields = [];
    private readonly string? _given;

    /// <param name="ledger">The ledger.</param>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="begin">What is written in it when it opens, by the fields' names: what it is about.</param>
    public KindForm(ILedger ledger, EntryKind kind, params ReadOnlySpan<(string Field, string? Text)> begin)
        : base(ledger)
    {
        (_kind, _holdings) = (kind, ledger.HoldingsOn(ledger.Today));
        foreach (var field in kind.Fields.Append(CommonFields.Note))
            _fields[field] = Made(field);
        foreach (var (name, text) in begin)
        {
            this[name].Offer(text);
            _given ??= name;
        }

        Offer();
        Rows = Flow();
    }

    /// <summary>The form of a kind by its name.</summary>
    public KindForm(ILedger ledger, string kind, params ReadOnlySpan<(string Field, string? Text)> begin)
        : this(ledger, EntryKinds.Named(kind) ?? throw new ArgumentException($"there is no kind {kind}", nameof(kind)), begin)
    {
    }

    /// <inheritdoc/>
    public override string Title => _kind.Title;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Purpose => [_kind.Purpose, .. _kind.Details];

    /// <inheritdoc/>
    public override IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    /// <inheritdoc/>
    public override FormField First => _kind.Fields.Where(one => one.IsNeeded && one.Name != _given)
        .Select(one => _fields[one]).FirstOrDefault(box => box.IsEmpty) ?? _fields[_kind.Fields[0]];

    /// <summary>The field of that name.</summary>
    public FormField this[string name] => _fields.First(pair => pair.Key.Name == name).Value;

    /// <inheritdoc/>
    public override void Edited(FormField field) => Offer();

    /// <inheritdoc/>
    protected override Entry Read(Answers answers)
    {
        var reading = Reading();
        foreach (var problem in reading.Problems)
            answers.Problem(problem.Sentence(LabelOf));
        return reading.Entry!;
    }

    private EntryReading Reading()
    {
        var text = new EntryText { [CommonFields.Date] = Date.Text, Key = EntryKey };
        foreach (var (field, box) in _fields)
            text[field] = box.Kind != FieldKind.Tick ? box.Text : box.IsTicked ? "yes" : field.IsNeeded ? "no" : "";
        return EntryReading.Read(_kind, text, ReadingTerms.Typed(_holdings, Ledger.Today));
    }

    /// <summary>Writes into every field that nobody has typed in what its description offers, given what stands in the others.</summary>
    private void Offer()
    {
        foreach (var (field, box) in _fields)
            if (field.Offer is { } offer && !box.IsTouched && field.Name != _given)
                box.Offer(offer(Reading().Values, _holdings));
    }

    private FormField Made(Field field) => new(field.Label, field.Width, KindOf(field))
    {
        Hint = Hint(field),
        Choices = () => field.Notation.Words.Count > 0 ? field.Notation.Words : field.Choices?.Invoke(Reading().Values, _holdings) ?? [],
    };

    private static FieldKind KindOf(Field field) => field.Notation.Shape switch
    {
        Shape.Number => FieldKind.Figure,
        Shape.Date => FieldKind.Date,
        Shape.Tick => FieldKind.Tick,
        Shape.Choice => FieldKind.Choice,
        _ => field.Choices is null ? FieldKind.Text : FieldKind.Choice,
    };

    private static string Hint(Field field) => $"{char.ToUpperInvariant(field.Help[0])}{field.Help[1..]}.";

    private string LabelOf(Field field) => field == CommonFields.Date ? Date.Label : _fields.TryGetValue(field, out var box) ? box.Label : field.Label;

    /// <summary>The fields row by row: as many side by side as a narrow screen has room for, the note below all.</summary>
    private List<IReadOnlyList<FormField>> Flow()
    {
        var rows = new List<IReadOnlyList<FormField>>();
        var row = new List<FormField> { Date };
        foreach (var field in _kind.Fields.Select(field => _fields[field]))
        {
            if (row.Append(field).Sum(one => one.Label.Length + one.Width + 3) > Columns || row.Count == 2)
            {
                rows.Add(row);
                row = [];
            }

            row.Add(field);
        }

        rows.Add(row);
        rows.Add([_fields[CommonFields.Note]]);
        return rows;
    }
}
