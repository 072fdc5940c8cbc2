using System.Drawing;
using System.Text;
using CsCheck;
using Ledger.Terminal.Quiet;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;
using Color = Terminal.Gui.Drawing.Color;

namespace Ledger.Terminal.Tests.Quiet;

public sealed class QuickBufferTests
{
    private const int Columns = 14, Rows = 4;

    /// <summary>
    /// Letters, lines and marks; broad signs, such as join others, ones that are two chars, and none that can be seen.
    /// </summary>
    private static readonly string[] Texts =
    [
        "abc", " ", "61 ml, 1+49", "─│┌…·█▏", "Größe", "東京", "a東b", "e\u0301a", "👍🏽", "\t", "a\nb", "\u00AD", "⌚", "⌚\uFE0F",
        "☎\uFE0F", "\u200D", "क्षि", "한", "", "★★★★★★★★★★★★★★★★★★★★",
    ];

    private static readonly Gen<(int Does, int Column, int Row, int Width, string Text, bool IsRed)[]> Drawings = Gen
        .Select(Gen.Int[0, 3], Gen.Int[-2, Columns + 1], Gen.Int[-1, Rows], Gen.Int[0, Columns], Gen.Int[0, Texts.Length - 1].Select(text => Texts[text]),
            Gen.Bool).Array[1, 20];

    [Fact]
    public void What_is_drawn_is_what_the_library_would_draw() => Drawings.Sample(drawings =>
    {
        var (quick, slow) = (new QuickBuffer(), new OutputBufferImpl());
        foreach (var buffer in new IOutputBuffer[] { quick, slow })
        {
            buffer.SetSize(Columns, Rows);
            foreach (var drawing in drawings)
                Draw(buffer, drawing);
        }

        Assert.Equal((slow.Col, slow.Row), (quick.Col, quick.Row));
        Assert.Equal(slow.DirtyLines, quick.DirtyLines);
        Assert.Equal(slow.Contents!.Cast<Cell>(), quick.Contents!.Cast<Cell>());
    }, iter: 2000);

    private static void Draw(
        IOutputBuffer buffer, (int Does, int Column, int Row, int Width, string Text, bool IsRed) drawing)
    {
        var (does, column, row, width, text, isRed) = drawing;
        var place = new Rectangle(column, row, width, 2);
        buffer.CurrentAttribute = new Attribute(isRed ? Color.Red : Color.Gray, Color.Black);
        switch (does)
        {
            case 0:
                buffer.FillRect(place, text.Length > 0 ? text.EnumerateRunes().First() : default);
                break;
            case 1:
                buffer.Clip = new Region(place);
                break;
            case 2:
                buffer.Clip = new Region(new Rectangle(0, 0, Columns, Rows));
                break;
            default:
                buffer.Move(column, row);
                buffer.AddStr(text);
                buffer.AddRune(new Rune('x'));
                break;
        }
    }

    [Fact]
    public void Plain_signs_are_one_column_broad_and_alone()
    {
        Assert.All("aZ09 .,+ä½×─█…→", sign => Assert.Equal($"{sign}", PlainSigns.CellOf(sign)!.Value.Grapheme));
        Assert.All("\t\n\u0007\u0301\u200D\uFE0F東⌚한", sign => Assert.Null(PlainSigns.CellOf(sign)));
        Assert.False(PlainSigns.Is(""));
        Assert.False(PlainSigns.Is("ab"));
    }
}
