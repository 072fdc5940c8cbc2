namespace Ledger.Core.Reordering;

/// <summary>
/// Repeatable draws: SplitMix64. Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators, OOPSLA '14. The same seed
/// gives the same draws on every machine.
/// </summary>
internal struct Draws(ulong seed)
{
    private const ulong Step = 0x9E3779B97F4A7C15;

    private ulong _state = seed;

    /// <summary>The draws of one of many runs; runs do not share draws.</summary>
    public static Draws Of(ulong seed, int run) => new(Mixed(unchecked(seed + (ulong)run * 0xD1342543DE82EF95)));

    /// <summary>A whole number from 0 to below <paramref name="count"/>.</summary>
    public int Below(int count) => (int)Math.BigMul(Next(), (ulong)count, out _);

    /// <summary>A number from 0 to below 1.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    private ulong Next() => Mixed(_state = unchecked(_state + Step));

    private static ulong Mixed(ulong value)
    {
        unchecked
        {
            value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
            value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
            return value ^ (value >> 31);
        }
    }
}
