using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>
/// The form of a kind of entry, made from its description. Forms that do more are derived from it and read nothing
/// themselves.
/// </summary>
internal class KindForm : FormModel
{
    /// <summary>The most fields of a row; more would be a wall of words.</summary>
    private const int Abreast = 3;

    private readonly EntryKind _kind;
    private readonly FieldBoxes _own;
    private readonly List<FieldBoxes> _lines = [];
    private readonly string _about;

    /// <param name="ledger">The ledger.</param>
    /// <param name="kind">The kind's name.</param>
    /// <param name="begin">
    /// What is written in it when it opens, by the fields' names: what it is about. It stands in place of what the
    /// description offers; a field that only a line has is one of the first line.
    /// </param>
    public KindForm(ILedger ledger, string kind, params ReadOnlySpan<(string Field, string? Text)> begin)
        : base(ledger)
    {
        _kind = EntryKinds.Named(kind) ?? throw new ArgumentException($"there is no kind {kind}", nameof(kind));
        Holdings = ledger.HoldingsOn(ledger.Today);
        _about = string.Join(' ', begin.ToArray().Where(one => one.Text is not null).Select(one => one.Text));
        Terms = ReadingTerms.Typed(Holdings, ledger.Today);
        _own = new([.. _kind.AllFields.Where(field => field != CommonFields.Reference)], Holdings,
            Terms, _kind.NamedBy);
        _own["date"].Begin(Dates.Text(ledger.Today));
        if (_kind.Line is not null)
            AddLine();
        foreach (var (name, text) in begin)
            if (text is not null)
                (_own.Find(name) ?? _lines[0][name]).Begin(text);
        OfferAll();
    }

    public override string Title => _kind.Title;

    public override IReadOnlyList<string> Purpose =>
        [_kind.Purpose, .. _kind.Details, .. ChemistryCautions.Rest(_kind)];

    public override string Example => $"As a command: trayledger record {_kind.Name} {_kind.Example}";

    public override IReadOnlyList<string> Cautions => ChemistryCautions.Of(_kind, Written(), Holdings);

    public override IReadOnlyList<IReadOnlyList<FormField>> Rows => Flow();

    public override IReadOnlyList<FormKey> Keys => [.. ListKeys, .. LineKeys];

    public override FormField? Difference => _own.Find("book_difference");

    public override FormKey? LastDay => !_kind.IsDated ? null
        : new(Key.D.WithCtrl, "Last day", "writes the day of the last entry, for what is entered later",
            _ => WriteLastDay());

    public override FormField? Anyway => _own["anyway"];

    public override FormField First => Open(isOffered: false) ?? Open(isOffered: true)
        ?? _kind.Fields.Select(one => _own.Find(one)!).FirstOrDefault(box => !box.IsGiven) ?? _own["note"];

    /// <summary>The lines.</summary>
    public IReadOnlyList<FieldBoxes> Lines => _lines;

    /// <summary>The field of that name; of the first line, where only lines have it.</summary>
    public FormField this[string name] => _own.Find(name) ?? _lines[0][name];

    public override void Edited(FormField field) => OfferAll();

    public override string? ParkedAs => $"{GetType().Name} {_kind.Name} {About}".TrimEnd();

    public override string Content() => ParkedForm.Write(EntryKey, _own, _lines);

    public override void PutBack(string content)
    {
        _lines.Clear();
        EntryKey = ParkedForm.Read(content, _own, () => AddLine());
        foreach (var line in _lines)
            LineIsBack(line);
        OfferAll();
    }

    public override Form? Maker(FormField field) => field.Makes is { } what
        ? Makers.Form(what, field.IsUnknown && field.Text.Trim() is { Length: > 0 } name ? name : null, Ledger) : null;

    public override void Renew(Entry? made, FormField? field)
    {
        Holdings = Ledger.HoldingsOn(Ledger.Today);
        Terms = ReadingTerms.Typed(Holdings, Ledger.Today);
        foreach (var boxes in _lines.Prepend(_own))
            boxes.Renew(Holdings, Terms);
        if (made is not null && field is { Kind: FieldKind.Choice } && Makers.Made(made) is { } name)
            field.Type(name);
        OfferAll();
    }

    /// <summary>A line was put back that had been left unsaved.</summary>
    protected virtual void LineIsBack(FieldBoxes line)
    {
    }

    /// <summary>What the ledger held when the form was opened.</summary>
    protected Holdings Holdings { get; private set; }

    /// <summary>How the fields are read.</summary>
    protected ReadingTerms Terms { get; private set; }

    /// <summary>What it was opened about, which tells it from others of its kind that were left unsaved.</summary>
    protected virtual string About => _about;

    /// <summary>The fields beside the lines.</summary>
    protected FieldBoxes Own => _own;

    /// <summary>Whether a field is asked for; what is not is not read either.</summary>
    protected virtual bool Asks(Field field) => true;

    /// <summary>
    /// Whether its place in the day is asked: only of what stands in the journal already; what is new comes last.
    /// </summary>
    protected virtual bool AsksPlace => false;

    /// <summary>
    /// From which day a definition has effect, where it changes one: what is new reaches back in any case.
    /// </summary>
    protected IEnumerable<IReadOnlyList<FormField>> FromDayRow =>
        _own.Find("from_day") is { } from
            && (_kind.NamedBy is not { } named || Holdings.Defines(_kind.Name, _own[named.Name].Text)) ? [[from]] : [];

    /// <summary>Whether a line counts for nothing as it stands.</summary>
    protected virtual bool IsBlank(FieldBoxes line) => _kind.Line is { IsNeeded: false } && line.AreEmpty;

    /// <summary>
    /// What is added as another line; it is among the lines already, and may be given what it is about.
    /// </summary>
    protected virtual FormField? Another() => OpenIn(AddLine());

    /// <summary>What a problem is called; the same words as in every other door.</summary>
    protected virtual string Told(FieldProblem problem) => problem.Sentence(LabelOf);

    /// <summary>What is read.</summary>
    protected virtual EntryText Written()
    {
        var text = _own.Written(field => Asks(field) && (_kind.IsDated || field != CommonFields.Date));
        text.Key = _kind.ReferenceField is { } named && text[named].Trim() is { Length: > 0 } reference
            ? reference
            : EntryKey;
        var written = _lines.Where(line => !IsBlank(line)).ToList();
        foreach (var line in written.Count == 0 && _kind.Line is { IsNeeded: true } ? _lines.Take(1) : written)
            text.Lines.Add(line.Written(Asks));
        return text;
    }

    protected override Entry? Read(ICollection<string> problems)
    {
        var reading = EntryReading.Read(_kind, Written(), Terms);
        foreach (var problem in reading.Problems)
            problems.Add(Told(problem));
        return reading.Entry;
    }

    /// <summary>Fills in what stands open, and then what the form itself knows.</summary>
    protected virtual void OfferAll()
    {
        _own.Offer();
        foreach (var line in _lines)
            line.Offer();
    }

    /// <summary>The line that a field stands in; null for a field of the whole form.</summary>
    protected FieldBoxes? LineOf(FormField? field) => _lines.Find(line => line.Have(field));

    /// <summary>Adds a line.</summary>
    protected FieldBoxes AddLine(int? at = null)
    {
        var line = new FieldBoxes(_kind.Line!.Fields, Holdings, Terms);
        _lines.Insert(at ?? _lines.Count, line);
        line.Offer();
        return line;
    }

    /// <summary>Takes all lines away, for others to stand in their place.</summary>
    protected void ClearLines() => _lines.Clear();

    /// <summary>The field of a line that the cursor goes to.</summary>
    protected virtual FormField? OpenIn(FieldBoxes line) =>
        line.Open(isOffered: false) ?? line.Open(isOffered: true) ?? line.All.First();

    /// <summary>Takes the line with the cursor away, but not the last one.</summary>
    protected FormField? Drop(FormField? at)
    {
        if (_lines.Count < 2 || LineOf(at) is not { } line)
            return null;
        var place = _lines.IndexOf(line);
        _lines.Remove(line);
        return OpenIn(_lines[Math.Min(place, _lines.Count - 1)]);
    }

    private FormField? Open(bool isOffered) =>
        _own.Open(isOffered) ?? _lines.Select(line => line.Open(isOffered)).FirstOrDefault(box => box is not null);

    /// <summary>Adds the next of what the ledger offers to a list of names.</summary>
    private IEnumerable<FormKey> ListKeys => _own.Lists.Take(1).Select(list => new FormKey(
        Key.F3, "Next one", $"adds the next one to {list.Box.Label}", _ => AddNext(list.Box, list.Divider)));

    private IEnumerable<FormKey> LineKeys => _kind.Line is null ? [] :
    [
        new(Key.F4, "Line", "adds a line", _ => Another()),
        new(Key.F5, "Drop", "takes the line with the cursor away", Drop),
    ];

    private FormField AddNext(FormField list, string divider)
    {
        var names = list.Text.Split(
            divider.Trim() is { Length: > 0 } sign ? sign : " ",
            StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (list.Choices().FirstOrDefault(name => !names.Contains(name, StringComparer.OrdinalIgnoreCase)) is { } next)
            list.Type(string.Join(divider, names.Append(next)));
        OfferAll();
        return list;
    }

    private FormField? WriteLastDay()
    {
        if (Ledger.Journal(Ledger.Today, null, 1) is [var last])
            _own["date"].Type(Dates.Text(last.Date));
        OfferAll();
        return null;
    }

    /// <summary>What a field is called in the form.</summary>
    protected string LabelOf(Field field) =>
        (_own.Find(field) ?? _lines.Select(line => line.Find(field)).FirstOrDefault(box => box is not null))?.Label
            ?? field.Label;

    /// <summary>The fields row by row: the lines between those of the whole and the note.</summary>
    private IReadOnlyList<IReadOnlyList<FormField>> Flow()
    {
        var above = Asked(_kind.IsDated ? _kind.Fields.Prepend(CommonFields.Date) : _kind.Fields, _own);
        var lines = _lines.Select(line => Asked(_kind.Line!.Fields, line)).ToList();
        var labels = lines.Append(above).Max(fields => FieldRows.LabelsOf(FieldRows.Of(fields, Abreast)));
        return
        [
            .. FieldRows.Of(above, Abreast, labels), .. lines.SelectMany(line => FieldRows.Of(line, Abreast, labels)),
            .. FromDayRow, [_own["note"]],
            .. AsksPlace && _own.Find("before") is { } place ? new IReadOnlyList<FormField>[] { [place] } : [],
            .. _own["anyway"].IsTicked ? new IReadOnlyList<FormField>[] { [_own["anyway"]] } : [],
        ];
    }

    private List<FormField> Asked(IEnumerable<Field> fields, FieldBoxes boxes) =>
        [.. fields.Where(Asks).Select(boxes.Find).OfType<FormField>()];
}
