namespace Ledger.App.Commands.Record;

/// <summary>
/// Shows what an entry changed: its summary, every bottle, box and bath before and after, and what the user should
/// know.
/// </summary>
internal static class PostingText
{
    public static void Write(string heading, Posting posting, Surroundings around)
    {
        around.Out.WriteProse($"{heading}: {posting.Summary}", around.Width);
        var table = new TextTable(Column.Left(""), Column.Right(""), Column.Left(""), Column.Left(""));
        foreach (var effect in posting.Effects)
            table.Add("  " + effect.What, effect.Before, "->", effect.After);
        table.WriteTo(around.Out, around.Width);
        foreach (var remark in posting.Remarks)
            around.Error.WriteLine($"note: {remark}");
    }
}
