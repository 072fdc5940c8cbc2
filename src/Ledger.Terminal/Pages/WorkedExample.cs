namespace Ledger.Terminal.Pages;

/// <summary>What a screen is good for, shown with the demo year; a test types it there.</summary>
/// <param name="Keys">What is typed on the screen, a letter each; a line feed is Enter. Empty where looking is
/// enough.</param>
/// <param name="Does">What that does, in a sentence.</param>
/// <param name="Shows">What stands on the screen then.</param>
internal sealed record WorkedExample(string Keys, string Does, string Shows);
