namespace Ledger.Storage.Files;

/// <summary>
/// The single places and the fates as statements name them. They are constants because statements are turned into code
/// when the program is built; a test holds them to those of the trade.
/// </summary>
internal static class InSql
{
    /// <summary>Where deliveries come from.</summary>
    public const string Supplier = "1";

    /// <summary>Developed sheets that are negatives.</summary>
    public const string FiledNegatives = "2";

    /// <summary>Developed sheets that are none.</summary>
    public const string Rejects = "3";

    /// <summary>What was used up.</summary>
    public const string UsedUp = "4";

    /// <summary>What a count found missing, or too much.</summary>
    public const string LostOrGained = "5";

    /// <summary>What was discarded unused.</summary>
    public const string Discarded = "6";

    /// <summary>Where powder turns into stock solution.</summary>
    public const string Mixing = "7";

    /// <summary>Paper that was printed on.</summary>
    public const string Prints = "8";

    /// <summary>Where stock comes from, and where it goes without having been used.</summary>
    public const string OutsideUse = $"{Supplier}, {LostOrGained}, {Discarded}";

    /// <summary>The fate of a sheet that was developed before.</summary>
    public const string Dummy = "'dummy'";

    /// <summary>The fates of film that was used to make a picture.</summary>
    public const string OfPictures = "'negative', 'keeper', 'reject'";
}
