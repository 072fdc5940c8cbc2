namespace Ledger.Terminal.Tests.Forms;

/// <summary>
/// The form that is made of a description asks for all that the kind says: its fields, those of a line, the day and the
/// note.
/// </summary>
public sealed class EveryFieldTests
{
    public static TheoryData<string> Kinds => [.. EntryKinds.All.Select(kind => kind.Name)];

    /// <summary>
    /// A form sets the reference itself, and what has no day of its own is not asked for one, unless it changes what is
    /// defined already: a setting always is.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_field_of_a_kind_has_its_place_in_the_form(string name)
    {
        var kind = EntryKinds.Named(name)!;
        var asked = new KindForm(Some.Ledger(), name).Rows.SelectMany(row => row).ToList();
        Assert.Equal(asked.Count, asked.Distinct().Count());
        Assert.Equal(kind.Fields.Count + (kind.IsDated ? 1 : 0) + 1 + (kind.Line?.Fields.Count ?? 0)
            + (name == "setting" ? 1 : 0), asked.Count);
    }
}
