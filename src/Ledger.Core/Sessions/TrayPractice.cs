using Ledger.Core.Measures;

namespace Ledger.Core.Sessions;

/// <summary>
/// How the user works in trays. The defaults are common practice without a source; each is a setting.
/// </summary>
/// <param name="Limit">The most sheets in a batch.</param>
/// <param name="FullShuffleSeconds">The time in which the whole stack passes once through the hands.</param>
/// <param name="ShortMinutes">A developing time that is no longer than this is warned of.</param>
/// <param name="DepthTenths">The least depth of solution over the sheets, in tenths of a millimetre: half an inch is
/// 127.</param>
/// <param name="Graduate">The finest step of the user's graduate; null to measure exactly.</param>
public sealed record TrayPractice(BatchLimit Limit, int FullShuffleSeconds, int ShortMinutes,
    int DepthTenths, Volume? Graduate)
{
    /// <summary>
    /// Four sheets of 8x10, 30 seconds for the stack, a word at 7 minutes or less, half an inch of solution.
    /// </summary>
    public static TrayPractice Common { get; } = new(BatchLimit.CommonPractice, FullShuffleSeconds: 30,
        ShortMinutes: 7, DepthTenths: 127, null);

    /// <summary>
    /// How often a sheet is moved when so many lie in the stack: every 15 seconds for two, every 7.5 for four.
    /// </summary>
    public decimal ShuffleEverySeconds(int inTray) => (decimal)FullShuffleSeconds / inTray;

    /// <summary>
    /// The least solution that covers a sheet to the depth: the sheet's area × the depth, rounded up to a millilitre.
    /// </summary>
    public Volume LeastIn(Format format) =>
        Volume.FromMillilitres(Math.Ceiling(format.Area.SquareCentimetres * DepthTenths / 100));
}
