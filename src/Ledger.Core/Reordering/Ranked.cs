namespace Ledger.Core.Reordering;

/// <summary>
/// Which value stands at a rank, without sorting the rest: Hoare (1961), Algorithm 65: Find, Communications of the ACM 4(7), 321-322. The
/// work grows with the number of values, that of a sort faster.
/// </summary>
internal static class Ranked
{
    /// <summary>The value that would stand at <paramref name="rank"/>, counting from 0, if the values were sorted. It moves them about.</summary>
    public static long At(Span<long> values, int rank)
    {
        var (low, high) = (0, values.Length - 1);
        while (low < high)
        {
            var (left, right) = Parted(values, low, high);
            if (rank <= right)
                high = right;
            else if (rank >= left)
                low = left;
            else
                break;
        }

        return values[rank];
    }

    /// <summary>
    /// Parts a stretch by the middle of three of its values: nothing up to <c>right</c> is above it, nothing from <c>left</c> on below it,
    /// and what stands between them is equal to it.
    /// </summary>
    private static (int Left, int Right) Parted(Span<long> values, int low, int high)
    {
        var (first, middle, last) = (values[low], values[low + (high - low) / 2], values[high]);
        var pivot = Math.Max(Math.Min(first, middle), Math.Min(Math.Max(first, middle), last));
        var (left, right) = (low, high);
        while (left <= right)
        {
            while (values[left] < pivot)
                left++;
            while (values[right] > pivot)
                right--;
            if (left > right)
                break;
            (values[left], values[right]) = (values[right], values[left]);
            left++;
            right--;
        }

        return (left, right);
    }
}
