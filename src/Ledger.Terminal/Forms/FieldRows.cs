using Ledger.Terminal.Pages;

namespace Ledger.Terminal.Forms;

/// <summary>How fields stand on a form: side by side as long as a narrow screen has room for them.</summary>
internal static class FieldRows
{
    private const int Columns = 78;
    private const int Flowing = 68;
    private const int Gap = 2;

    /// <summary>
    /// The fields row by row. The boxes that begin a row stand below each other, behind the longest label.
    /// </summary>
    /// <param name="fields">The fields in order.</param>
    /// <param name="most">The most fields of a row.</param>
    /// <param name="labels">The columns of the labels that begin a row, where other rows decide.</param>
    public static IReadOnlyList<IReadOnlyList<FormField>> Of(IReadOnlyList<FormField> fields, int most, int labels = 0)
    {
        while (true)
        {
            var rows = Filled(fields, most, labels);
            var needed = LabelsOf(rows);
            if (needed <= labels)
                return rows;
            labels = needed;
        }
    }

    /// <summary>The columns of the labels that begin a row.</summary>
    public static int LabelsOf(IReadOnlyList<IReadOnlyList<FormField>> rows) =>
        rows.Count == 0 ? 0 : rows.Max(row => row[0].Kind == FieldKind.Tick ? 0 : row[0].Label.Length) + 1;

    /// <summary>Where a field's box begins when it is put behind what ends at the column.</summary>
    public static int BoxAt(FormField field, int column, int labels) =>
        field.Kind == FieldKind.Tick
            ? Math.Max(column, labels)
            : column + (column == 0 ? labels : field.Label.Length + 1);

    /// <summary>Where the next field can begin.</summary>
    public static int Behind(FormField field, int box) =>
        box + (field.Kind == FieldKind.Tick ? field.Label.Length + 4 : WidthOf(field, box)) + Gap;

    /// <summary>How wide a field's box is: what is longer scrolls in it.</summary>
    public static int WidthOf(FormField field, int box) => Math.Clamp(Columns - box, 1, field.Width);

    private static List<List<FormField>> Filled(IReadOnlyList<FormField> fields, int most, int labels)
    {
        var rows = new List<List<FormField>>();
        var column = 0;
        foreach (var field in fields)
        {
            var next = Behind(field, BoxAt(field, column, labels));
            if (rows.Count == 0 || rows[^1].Count == most || next - Gap > Flowing)
            {
                rows.Add([]);
                next = Behind(field, BoxAt(field, 0, labels));
            }

            rows[^1].Add(field);
            column = next;
        }

        return rows;
    }
}
