using System.Text;

namespace Ledger.Exchange.Print;

/// <summary>A drawing as inline SVG: lines, boxes and words, nothing that is loaded, and no address.</summary>
/// <param name="width">Its width in units; the page scales it.</param>
/// <param name="height">Its height.</param>
/// <param name="title">What it shows, for those who cannot see it.</param>
internal sealed class Svg(int width, int height, string title)
{
    private readonly StringBuilder _body = new();

    public void Line(double x1, double y1, double x2, double y2, string name = "") =>
        _body.Append($"<line{Class(name)} x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"/>\n");

    public void Box(double x, double y, double wide, double high, string name) =>
        _body.Append($"<rect{Class(name)} x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(wide)}\" height=\"{N(high)}\"/>\n");

    public void Dot(double x, double y) => _body.Append($"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"3\"/>\n");

    public void Words(double x, double y, string text, string name = "") =>
        _body.Append($"<text{Class(name)} x=\"{N(x)}\" y=\"{N(y)}\">{PrintedText.Html(text)}</text>\n");

    /// <summary>Words that stand upright, read from below.</summary>
    public void Upright(double x, double y, string text) => _body.Append(
        $"<text class=\"mid\" transform=\"translate({N(x)} {N(y)}) rotate(-90)\">{PrintedText.Html(text)}</text>\n");

    /// <summary>A box in one of four shades that black and white tells apart: grey, hatched, light, black.</summary>
    public void Shaded(double x, double y, double wide, double high, int shade)
    {
        Box(x, y, wide, high, $"s{shade % 4}");
        if (shade % 4 == 1)
            Hatch(x, y, wide, high);
    }

    public override string ToString() =>
        $"<svg viewBox=\"0 0 {width} {height}\" role=\"img\" aria-label=\"{PrintedText.Html(title)}\">\n{_body}</svg>";

    /// <summary>
    /// Slanted lines that end where the box does. A pattern would have to be referred to by an address.
    /// </summary>
    private void Hatch(double x, double y, double wide, double high)
    {
        for (var along = 4.0; along < wide + high; along += 4)
            Line(
                x + Math.Max(0, along - high), y + Math.Min(along, high),
                x + Math.Min(along, wide), y + Math.Max(0, along - wide), "hatch");
    }

    private static string Class(string name) => name.Length == 0 ? "" : $" class=\"{name}\"";

    private static string N(double number) => Math.Round(number, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
