namespace Ledger.Core.Journal.Entries;

/// <summary>A setting of the whole ledger is changed.</summary>
public sealed record SettingChange : Definition
{
    /// <summary>The setting's name; see <see cref="Settings"/>.</summary>
    public required string Setting { get; init; }

    /// <summary>Its new value.</summary>
    public required string Value { get; init; }

    /// <inheritdoc/>
    public override string Kind => "setting";
}
