using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>A form with lines of sheets, each of one film and group: of a session, or of a plan.</summary>
internal abstract class SheetLines : KindForm
{
    private const int MostLines = 12;
    private const int OneBatch = 4;
    private readonly HashSet<FieldBoxes> _known = [];

    /// <summary>Opens the form.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="kind">The kind's name.</param>
    /// <param name="begin">What is written in it.</param>
    protected SheetLines(ILedger ledger, string kind, params ReadOnlySpan<(string Field, string? Text)> begin)
        : base(ledger, kind, begin)
    {
    }

    public override FormField First => Lines[0]["item"] is { IsEmpty: true } film ? film : Lines[0]["sheets"];

    /// <summary>The keys of lines of sheets.</summary>
    protected IReadOnlyList<FormKey> SheetKeys =>
    [
        new(Key.F3, "+4 sheets", "adds four sheets to the line with the cursor",
            at => Add(Counted(LineAt(at)), OneBatch)),
        new(Key.F4, "Line", "adds a line like the last one, for another batch", _ => Another()),
        new(Key.F5, "Drop", "takes the line with the cursor away", Drop),
    ];

    /// <summary>A line counts for nothing while it says no sheets.</summary>
    protected override bool IsBlank(FieldBoxes line) => line["sheets"].IsEmpty;

    /// <summary>Another line of the same film and group.</summary>
    protected override FormField? Another() => Lines.Count < MostLines ? Like(Lines[^1])["sheets"] : null;

    /// <summary>Whether any line says which sheets it is about.</summary>
    protected bool AnyKnown => _known.Count > 0;

    /// <summary>Whether a line says which sheets it is about, and so asks for that.</summary>
    protected bool IsKnown(FieldBoxes line) => _known.Contains(line);

    /// <summary>A line says from now on which sheets it is about.</summary>
    protected void Know(FieldBoxes line) => _known.Add(line);

    protected override void LineIsBack(FieldBoxes line)
    {
        if (!line["from"].IsEmpty)
            Know(line);
    }

    /// <summary>A line that names its sheets counts them and knows their film and group.</summary>
    public override void Edited(FormField field)
    {
        base.Edited(field);
        if (LineOf(field) is { } line && line["from"] == field)
            OfferSheets(line);
    }

    /// <summary>The line with the cursor, or the last one.</summary>
    protected FieldBoxes LineAt(FormField? at) => LineOf(at) ?? Lines[^1];

    /// <summary>Adds a line of the film and group of another one.</summary>
    protected FieldBoxes Like(FieldBoxes before, int? at = null)
    {
        var line = AddLine(at);
        line["item"].Begin(before["item"].Text);
        line["group"].Begin(before["group"].Text);
        return line;
    }

    /// <summary>A line that only counts its sheets: one that names them cannot have more of them.</summary>
    private FieldBoxes Counted(FieldBoxes line) => line["from"].IsEmpty ? line
        : Lines.FirstOrDefault(other => other["from"].IsEmpty && other["item"].Text == line["item"].Text
            && other["group"].Text == line["group"].Text)
            ?? Like(line);

    /// <summary>So many sheets more, or fewer.</summary>
    protected static FormField Add(FieldBoxes line, int sheets)
    {
        var field = line["sheets"];
        if (field.IsEmpty)
            field.Type("0");
        field.Turn(sheets);
        return field;
    }

    /// <summary>What is in the place that a line names: its film, its group, and how many sheets.</summary>
    protected void OfferSheets(FieldBoxes line)
    {
        if (KnownSheets.Find(line["from"].Text, Holdings.Film) is not [var first, ..] sheets)
            return;
        line["item"].Begin(first.Item);
        line["group"].Begin(first.Exposure?.Group);
        line["sheets"].Begin(Scaled.ToText(sheets.Count, 0));
    }

    /// <summary>Puts these lines in the place of those that stand there.</summary>
    /// <param name="kind">Their kind, by which they are written.</param>
    /// <param name="entry">An entry that says them.</param>
    protected void TakeOver(string kind, Core.Journal.Entries.Entry entry)
    {
        ClearLines();
        foreach (var text in EntryWriting.Write(EntryKinds.Named(kind)!, entry, Terms).Lines)
        {
            var line = AddLine();
            line.Begin(text);
            if (!line["from"].IsEmpty)
                Know(line);
        }
    }
}
