namespace Ledger.App.Wiring;

/// <summary>A command refuses with a sentence and has written nothing.</summary>
internal sealed class RefusedByCommandException(string sentence) : Exception(sentence);
