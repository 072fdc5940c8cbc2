using Terminal.Gui.Input;

namespace Ledger.Terminal.Forms;

/// <summary>The fields of one line of a form that can have several, each about packs of an item.</summary>
internal interface ILineFields
{
    /// <summary>The item it is about.</summary>
    FormField Item { get; }

    /// <summary>The fields row by row.</summary>
    IReadOnlyList<IReadOnlyList<FormField>> Rows { get; }

    /// <summary>The field that is most often written first.</summary>
    FormField First { get; }
}

/// <summary>The lines of a form, one at least, and the keys that add and drop one.</summary>
/// <typeparam name="TLine">The fields of a line.</typeparam>
/// <param name="another">Makes a line to be added.</param>
internal sealed class FormLines<TLine>(Func<TLine> another)
    where TLine : class, ILineFields
{
    private readonly List<TLine> _lines = [];

    /// <summary>The lines in order.</summary>
    public IReadOnlyList<TLine> All => _lines;

    /// <summary>Whether there is more than one.</summary>
    public bool AreSeveral => _lines.Count > 1;

    /// <summary>The fields of all lines row by row.</summary>
    public IEnumerable<IReadOnlyList<FormField>> Rows => _lines.SelectMany(line => line.Rows);

    /// <summary>F4 and F5.</summary>
    public IReadOnlyList<FormKey> Keys =>
    [
        new(Key.F4, "Line", "adds a line for another item", _ => Add(another())),
        new(Key.F5, "Drop", "takes the line with the cursor away", Drop),
    ];

    /// <summary>Adds a line.</summary>
    /// <returns>The field the cursor goes to.</returns>
    public FormField Add(TLine line)
    {
        _lines.Add(line);
        return line.First;
    }

    /// <summary>Whether a line is about the item.</summary>
    public bool Have(string item) => _lines.Exists(line => line.Item.Text.Trim().Equals(item, StringComparison.OrdinalIgnoreCase));

    /// <summary>The line that a field stands in; null for a field of the whole form.</summary>
    public TLine? Of(FormField? field) => _lines.Find(line => line.Rows.Any(row => row.Any(one => one == field)));

    /// <summary>Reads every line; where there are several, a problem says in which it is.</summary>
    public IReadOnlyList<TRead> Read<TRead>(Answers answers, Func<TLine, Answers, TRead> read) =>
        [.. _lines.Select((line, i) => read(line, AreSeveral ? answers.InLine(i + 1) : answers))];

    private FormField? Drop(FormField? at)
    {
        if (!AreSeveral || Of(at) is not { } line)
            return null;
        var place = _lines.IndexOf(line);
        _lines.Remove(line);
        return _lines[Math.Min(place, _lines.Count - 1)].First;
    }
}
