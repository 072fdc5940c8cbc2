using System.Drawing;
using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Text;

namespace Ledger.Terminal.Quiet;

/// <summary>
/// The picture that the views draw. What consists of plain signs is put in its places at once; the library takes each
/// sign for one that may be broad or join others, and measures it four times. Anything else is left to the library.
/// </summary>
internal sealed class QuickBuffer : OutputBufferImpl, IOutputBuffer
{
    void IOutputBuffer.AddRune(char sign) => Add(sign.ToString());

    void IOutputBuffer.AddRune(Rune sign) => Add(sign.ToString());

    void IOutputBuffer.AddStr(string text) => Add(text);

    void IOutputBuffer.FillRect(Rectangle place, char sign) => Fill(place, new(sign));

    void IOutputBuffer.FillRect(Rectangle place, Rune sign) => Fill(place, sign);

    private void Add(string text)
    {
        if (!IsPlain(text) || Clip is not { } clip)
        {
            AddStr(text);
            return;
        }

        var (right, row) = (clip.GetBounds().Right, Row);
        for (var (i, column) = (0, Col); i < text.Length; i++, column++)
            Put(PlainSigns.CellOf(text[i])!.Value, column, row, clip, right);
        Move(Col + text.Length, row);
    }

    /// <summary>Fills a place with a sign; with none, a blank.</summary>
    private void Fill(Rectangle place, Rune sign)
    {
        if (!sign.IsBmp || PlainSigns.CellOf(sign == default ? ' ' : (char)sign.Value) is not { } cell
            || CurrentUrl is not null || Clip is not { } clip)
        {
            FillRect(place, sign);
            return;
        }

        var bounds = clip.GetBounds();
        place.Intersect(bounds);
        for (var row = place.Y; row < place.Bottom; row++)
            for (var column = place.X; column < place.Right; column++)
                Put(cell, column, row, clip, bounds.Right);
    }

    private bool IsPlain(string text)
    {
        foreach (var sign in text)
            if (PlainSigns.CellOf(sign) is null)
                return false;
        return CurrentUrl is null;
    }

    private void Put(Cell cell, int column, int row, Region clip, int right)
    {
        if (Contents is not { } cells || column < 0 || row < 0 || column >= Cols || row >= Rows
            || !clip.Contains(column, row))
            return;
        if (column > 0 && IsBroad(cells[row, column - 1].Grapheme))
        {
            // It covers the second half of the sign before it; the library knows what becomes of the first.
            var (back, line) = (Col, Row);
            Move(column, row);
            AddStr(cell.Grapheme);
            Move(back, line);
            return;
        }

        cell.Attribute = CurrentAttribute;
        cell.IsDirty = true;
        cells[row, column] = cell;
        DirtyLines[row] = true;
        if (column + 1 < Math.Min(right, Cols))
            cells[row, column + 1].IsDirty = true;
    }

    private static bool IsBroad(string sign) => !PlainSigns.Is(sign) && sign.GetColumns() > 1;
}
