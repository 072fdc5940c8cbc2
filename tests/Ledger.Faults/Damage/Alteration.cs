using System.Buffers.Binary;

namespace Ledger.Faults.Damage;

/// <summary>A way in which the bytes of a file are altered behind everybody's back.</summary>
/// <param name="Name">In words.</param>
/// <param name="Alter">Alters the bytes at a random place; returns them and says what was done.</param>
public sealed record Alteration(string Name, Func<byte[], Random, (byte[] Bytes, string What)> Alter)
{
    /// <summary>Every way that is tried.</summary>
    public static IReadOnlyList<Alteration> All { get; } =
    [
        new("one bit flipped", (bytes, random) =>
        {
            var (at, bit) = (random.Next(bytes.Length), random.Next(8));
            bytes[at] ^= (byte)(1 << bit);
            return (bytes, $"bit {bit} of byte {at}");
        }),
        new("one byte altered", (bytes, random) =>
        {
            var (at, change) = (random.Next(bytes.Length), random.Next(1, 256));
            bytes[at] = (byte)((bytes[at] + change) % 256);
            return (bytes, $"byte {at} by {change}");
        }),
        new("a page emptied", (bytes, random) =>
        {
            var page = random.Next(Pages(bytes));
            Page(bytes, page).Clear();
            return (bytes, $"page {page + 1} emptied");
        }),
        new("a page full of noise", (bytes, random) =>
        {
            var page = random.Next(Pages(bytes));
            random.NextBytes(Page(bytes, page));
            return (bytes, $"page {page + 1} full of noise");
        }) { IsAlwaysSeen = true },
        new("a page in another's place", (bytes, random) =>
        {
            var (from, to) = (random.Next(Pages(bytes)), random.Next(Pages(bytes)));
            Page(bytes, from).CopyTo(Page(bytes, to));
            return (bytes, $"page {from + 1} in the place of {to + 1}");
        }),
        new("the end cut off", (bytes, random) =>
        {
            var length = random.Next(bytes.Length);
            return (bytes[..length], $"cut to {length} bytes");
        }),
        new("whole pages cut off", (bytes, random) =>
        {
            var pages = random.Next(1, Pages(bytes));
            return (bytes[..(pages * PageSize(bytes))], $"cut to {pages} pages");
        }) { IsAlwaysSeen = true },
        new("noise at the end", (bytes, random) =>
        {
            var more = new byte[random.Next(1, 20_000)];
            random.NextBytes(more);
            return ([.. bytes, .. more], $"{more.Length} bytes at the end");
        }),
    ];

    /// <summary>
    /// Whether it always destroys what the database needs, so that it is seen whatever the tables hold.
    /// </summary>
    public bool IsAlwaysSeen { get; init; }

    /// <summary>SQLite's database file format: the page size stands big-endian at offset 16, 1 for 65536.</summary>
    private static int PageSize(byte[] bytes) =>
        BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(16)) is var size && size == 1 ? 65536 : size;

    private static int Pages(byte[] bytes) => bytes.Length / PageSize(bytes);

    private static Span<byte> Page(byte[] bytes, int page) => bytes.AsSpan(page * PageSize(bytes), PageSize(bytes));
}
