namespace Ledger.Storage.Upkeep;

/// <summary>The table of what was typed and not saved yet, which is no part of the ledger.</summary>
internal sealed class Drafts(SqliteConnection connection)
{
    /// <summary>Its name.</summary>
    public const string Table = "draft";

    public string? Find(string form) =>
        connection.QueryFirstOrDefault<string>("SELECT text FROM draft WHERE form = @form", new { form });

    public void Keep(string form, string? text)
    {
        if (text is null)
            connection.Execute("DELETE FROM draft WHERE form = @form", new { form });
        else
            connection.Execute(
                "INSERT INTO draft (form, text) VALUES (@form, @text) ON CONFLICT (form) DO UPDATE SET text = "
                    + "excluded.text", new { form, text });
    }
}
