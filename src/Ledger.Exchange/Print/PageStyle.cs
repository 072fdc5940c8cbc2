using System.Text;

namespace Ledger.Exchange.Print;

/// <summary>
/// The style of the printed pages: black on white, figures of 26 points, labels on A4 or letter paper.
/// </summary>
internal static class PageStyle
{
    /// <summary>The title at the head of every sheet of paper but the first, where it stands large.</summary>
    public static string Running(string title) =>
        $"@page {{ @top-left {{ content: \"{Escaped(title)}\"; font: 9pt system-ui, sans-serif; }} }}\n"
        + "@page :first { @top-left { content: none; } }";

    /// <summary>Sheets of labels: each label where its grid has it, in letters for which it has room.</summary>
    public static string Of(LabelSheet sheet, LabelType type) => string.Create(CultureInfo.InvariantCulture, $$"""
        @page { {{(sheet.HasCuttingLines ? "" : $"size: {sheet.Paper.Width}mm {sheet.Paper.Height}mm; ")}}margin: 0; }
        body { max-width: none; margin: 0; padding: 0; }
        .sheet { width: {{sheet.Paper.Width}}mm; height: {{sheet.Paper.Height - Slack}}mm;
            padding: {{sheet.Top:0.###}}mm {{sheet.Side:0.###}}mm 0;
            grid-template-columns: repeat({{sheet.Columns}}, {{sheet.LabelWidth:0.###}}mm);
            column-gap: {{sheet.Across:0.###}}mm;
            grid-template-rows: repeat({{sheet.Rows}}, {{sheet.LabelHeight:0.###}}mm);
            row-gap: {{sheet.Down:0.###}}mm; }
        section { padding: {{LabelType.Above}}mm {{LabelType.Beside}}mm; line-height: {{LabelType.LineHeight}}; }
        section h2 { font-size: {{type.Title}}pt; } section strong { font-size: {{type.Warning}}pt; }
        section p { font-size: {{type.Text}}pt; } section small { font-size: {{type.Small}}pt; }
        {{string.Join('\n', LabelType.Closest.Select(Of))}}
        """);

    /// <summary>The class of a label that has letters of its own.</summary>
    public static string ClassOf(LabelType own) => own == LabelType.Closest[0] ? "closer" : "closest";

    private static string Of(LabelType own) => string.Create(
        CultureInfo.InvariantCulture,
        $"section.{ClassOf(own)} h2 {{ font-size: {own.Title}pt; }} "
            + $"section.{ClassOf(own)} p {{ font-size: {own.Text}pt; }}");

    /// <summary>
    /// By so much a sheet of labels is lower than its paper, in millimetres, lest rounding makes an empty page.
    /// </summary>
    private const decimal Slack = 0.4m;

    /// <summary>
    /// A string of a style sheet in which no sign can end it: all but letters and digits are written by their number.
    /// </summary>
    private static string Escaped(string text) => string.Concat(PrintedText.Plain(text).EnumerateRunes()
        .Select(sign => sign.IsAscii && Rune.IsLetterOrDigit(sign) ? sign.ToString() : $"\\{sign.Value:x} "));

    public const string Css = """
        @page { margin: 12mm; @bottom-right { content: counter(page) " / " counter(pages);
            font: 9pt system-ui, sans-serif; } }
        @page labels { @bottom-right { content: none; } @top-left { content: none; } }
        @media screen { body { padding: 8mm 0; } }
        * { box-sizing: border-box; }
        body { font: 12pt/1.35 system-ui, sans-serif; color: #000; background: #fff; max-width: 190mm; margin: 0 auto; }
        h1 { font-size: 20pt; border-bottom: 2pt solid #000; padding-bottom: 1mm;
            margin: 0 0 3mm; overflow-wrap: anywhere; }
        .part { break-inside: avoid; }
        h2 { font-size: 14pt; margin: 4mm 0 0.5mm; break-after: avoid; overflow-wrap: anywhere; }
        p { margin: 1mm 0; overflow-wrap: anywhere; }
        ul { margin: 1mm 0; padding: 0; list-style: none; }
        .points li { display: flex; gap: 2mm; margin: 0.5mm 0; overflow-wrap: anywhere; }
        .points li::before { content: "\2013"; }
        .ticks li { display: flex; align-items: baseline; gap: 3mm; font-size: 14pt; margin: 1.2mm 0;
            break-inside: avoid; }
        .ticks li::before { content: ""; flex: none; width: 5mm; height: 5mm; border: 1pt solid #000;
            align-self: center; }
        .blanks { display: grid; grid-template-columns: repeat(4, 1fr); gap: 6mm; margin: 5mm 0 3mm;
            break-inside: avoid; }
        .blanks li { border-bottom: 1pt solid #000; padding-bottom: 6mm; }
        .cautions { border: 1.5pt solid #000; padding: 2mm 3mm; margin-top: 6mm; font-size: 10pt;
            columns: 2; column-gap: 8mm; break-inside: avoid; }
        .cautions li { break-inside: avoid; }
        .figures { display: flex; flex-wrap: wrap; gap: 1mm 8mm; break-inside: avoid; }
        .figures b { font-size: 26pt; line-height: 1.15; white-space: nowrap; margin-right: 2mm; }
        .figures span { font-size: 14pt; overflow-wrap: anywhere; }
        .station { display: grid; grid-template-columns: 71mm 1fr auto; column-gap: 4mm; border-top: 0.75pt solid #000;
            padding: 0.2mm 0;
            break-inside: avoid; }
        .station:not(.within) + .station.within, .within + .within { border-top: 0.5pt dotted #000; }
        .within .name { padding-left: 9mm; }
        .station b { display: block; font-size: 20pt; line-height: 1; }
        .name b { font-weight: normal; overflow-wrap: anywhere; }
        .amount b, .time b { white-space: nowrap; }
        .station small { display: block; font-size: 9pt; line-height: 1.1; overflow-wrap: anywhere; }
        .amounts { display: flex; flex-wrap: wrap; column-gap: 6mm; align-content: start; min-width: 0; }
        .amount { max-width: 100%; } .amount small { max-width: 50mm; }
        .time { text-align: right; }
        .note { grid-column: 1 / -1; }
        .station .ticks { grid-column: 1 / -1; padding-left: 9mm; }
        @page close { margin: 9mm 10mm; }
        .close { page: close; max-width: 196mm; }
        .close h1 { font-size: 18pt; line-height: 1.15; margin: 0 0 1mm; padding-bottom: 0.5mm; }
        .close h2 { font-size: 11pt; margin: 1mm 0 0; }
        .close p, .close .points li { font-size: 10pt; line-height: 1.2; margin: 0.5mm 0; }
        .close .ticks { display: flex; flex-wrap: wrap; gap: 0 5mm; margin: 0.3mm 0; }
        .close .ticks li { font-size: 9pt; line-height: 1.2; gap: 1.5mm; margin: 0.2mm 0; }
        .close .ticks li::before { width: 3.2mm; height: 3.2mm; }
        .close .blanks { margin: 1mm 0 0; gap: 5mm; }
        .close .blanks li { font-size: 9pt; line-height: 1.2; padding-bottom: 4mm; }
        .close .cautions { columns: 1; font-size: 9pt; line-height: 1.2; padding: 1mm 2mm; margin: 1mm 0; }
        .close .cautions li { display: inline; } .close .cautions li + li::before { content: " \2022  "; }
        .close table { margin: 1mm 0; } .close th, .close td { padding: 0.8mm 2mm; font-size: 12pt; line-height: 1.25; }
        table { border-collapse: collapse; width: 100%; margin: 2mm 0; }
        th, td { border: 0.75pt solid #000; padding: 1mm 2mm; text-align: left; vertical-align: top;
            overflow-wrap: break-word; }
        td:last-child { white-space: nowrap; }
        .figure { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
        .short { white-space: nowrap; }
        tr { break-inside: avoid; }
        .sums th, .sums td { padding: 0.5mm 2mm; font-size: 10.5pt; }
        svg { display: block; width: 100%; height: auto; margin: 2mm 0; break-inside: avoid;
            font: 12px system-ui, sans-serif; fill: #000;
            print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        svg text { paint-order: stroke; stroke: #fff; stroke-width: 3px; stroke-linejoin: round; }
        svg .mid { text-anchor: middle; } svg .end { text-anchor: end; }
        svg rect { stroke: #000; stroke-width: 0.8; }
        .s0 { fill: #777; } .s1 { fill: #fff; } .s2 { fill: #ddd; } .s3 { fill: #000; }
        .hatch { stroke: #000; stroke-width: 0.8; } .grid { stroke: #bbb; stroke-width: 0.6; }
        .axis { stroke: #000; stroke-width: 1; } .step { stroke: #000; stroke-width: 1.8; }
        .boxes { display: grid; grid-template-columns: repeat(10, 10mm); gap: 2mm; margin: 3mm 0; }
        .boxes i { width: 10mm; height: 10mm; border: 1pt solid #000; font: 8pt system-ui, sans-serif;
            text-align: right; padding: 0.5mm; }
        .sheet { page: labels; display: grid; break-after: page; overflow: hidden; }
        .sheet:last-of-type { break-after: auto; }
        section { overflow: hidden; display: flex; flex-direction: column; }
        .cut section.label { border: 0.5pt dashed #666; }
        section h2 { margin: 0 0 1mm; overflow-wrap: anywhere; }
        section p { margin: 0; overflow-wrap: anywhere; }
        section strong { background: #000; color: #fff; padding: 1mm 2mm; margin-bottom: 1.5mm; text-align: center;
            text-transform: uppercase; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        section footer { margin-top: auto; }
        section small { display: block; overflow-wrap: anywhere; }
        """;
}
