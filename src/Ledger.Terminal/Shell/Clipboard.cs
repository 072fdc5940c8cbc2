using System.Text;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The terminal's own clipboard, which is reached over any connection by a sequence that most terminals know (OSC 52,
/// xterm).
/// </summary>
internal static class Clipboard
{
    /// <summary>What puts a text into it.</summary>
    public static string Sequence(string text) => $"\e]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(text))}\a";
}
