using System.Text;
using Terminal.Gui.App;

namespace Ledger.Terminal.Shell;

/// <summary>
/// The terminal's own clipboard, which is reached over any connection by a sequence that most terminals know (OSC 52,
/// xterm). No terminal lets it be read that way: what was copied here is put in again from here, anything else by the
/// terminal's own key.
/// </summary>
/// <param name="send">Sends to the terminal.</param>
internal sealed class Clipboard(Action<string> send) : ClipboardBase
{
    private string _text = "";

    public override bool IsSupported => true;

    /// <summary>What puts a text into it.</summary>
    public static string Sequence(string text) => $"\e]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(text))}\a";

    protected override string GetClipboardDataImpl() => _text;

    protected override void SetClipboardDataImpl(string text)
    {
        _text = text;
        send(Sequence(text));
    }
}
