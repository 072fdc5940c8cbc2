using Ledger.Storage.Files;

namespace Ledger.Storage.Reading;

/// <summary>Dates as the file keeps them: ISO 8601 text, which sorts by day.</summary>
internal static class Days
{
    public static LocalDate Read(string text) =>
        Dates.Parse(text)
            ?? throw new LedgerFileException($"the file holds \"{text}\" where a date belongs; run `trayledger check`");

    public static LocalDate? ReadOptional(string? text) => text is null ? null : Read(text);
}
