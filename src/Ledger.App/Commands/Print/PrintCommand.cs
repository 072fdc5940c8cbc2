using Ledger.App.Commands.Files;
using Ledger.Exchange.Print;

namespace Ledger.App.Commands.Print;

/// <summary>Puts a page on paper: plain text for any printer, or one HTML file that a browser prints.</summary>
internal abstract class PrintCommand : ExplainedCommand
{
    private readonly Workbench _bench;
    private readonly Option<string?> _html = Typed.Option<string?>(
        "--html", "FILE", Text.NotEmpty,
        "write an HTML page for a browser to print, instead of plain text; - for the standard output");

    private readonly Option<bool> _replace = new("--replace") { Description = "replace that file if it exists" };

    protected PrintCommand(Workbench bench, string name, string summary, string details)
        : base(name, summary, details)
    {
        _bench = bench;
        Options.Add(_html);
        Options.Add(_replace);
        SetAction(Run);
    }

    /// <summary>Lays out the page.</summary>
    protected abstract PrintedPage Page(ParseResult parse, ILedger ledger, Holdings holdings);

    private int Run(ParseResult parse)
    {
        using var ledger = _bench.OpenToRead(parse);
        var page = ledger.Read(() => Page(parse, ledger, ledger.HoldingsOn(ledger.Today)));
        switch (parse.GetValue(_html))
        {
            case null: PlainPage.Write(page, _bench.Around.Out); break;
            case "-": HtmlPage.Write(page, _bench.Around.Out); break;
            case var file: Save(page, ledger.Path, Path.GetFullPath(file), parse.GetValue(_replace)); break;
        }

        return ExitStatus.Done;
    }

    private void Save(PrintedPage page, string ledger, string path, bool replace)
    {
        WholeFile.RequireOther(ledger, path);
        if (!replace && File.Exists(path))
            throw new RefusedByCommandException($"{path} exists already; name another file, or say --replace");
        PageFile.WriteHtml(page, ledger, path);
        _bench.Written = $"{page.Title}: {path}";
        _bench.Around.Out.WriteLine(_bench.Written);
    }
}
