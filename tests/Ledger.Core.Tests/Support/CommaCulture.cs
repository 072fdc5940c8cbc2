namespace Ledger.Core.Tests.Support;

/// <summary>
/// While it lasts the thread writes "1.234,5" as in German or French. The program is built without the data of any
/// culture, so one is made from the invariant one.
/// </summary>
internal sealed class CommaCulture : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    public CommaCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "−";
        culture.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        culture.DateTimeFormat.DateSeparator = ".";
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }

    public void Dispose()
    {
        CultureInfo.CurrentCulture = _before;
        CultureInfo.CurrentUICulture = _before;
    }
}
