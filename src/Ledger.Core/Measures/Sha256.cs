using System.Buffers.Binary;
using System.Text;
using static System.Numerics.BitOperations;

namespace Ledger.Core.Measures;

/// <summary>
/// The digest SHA-256 of a text: FIPS PUB 180-4, Secure Hash Standard, National Institute of Standards and Technology,
/// 2015, sections 5.1.1, 6.2. The runtime's own asks the system for OpenSSL, which a machine may lack.
/// </summary>
public static class Sha256
{
    private const int BlockLength = 64, LengthAt = 56;

    /// <summary>Section 4.2.2: of the cube roots of the first 64 primes the first 32 bits after the point.</summary>
    private static ReadOnlySpan<uint> Constants =>
    [
        0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
        0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
        0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
        0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
        0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
        0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
        0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
        0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2,
    ];

    /// <summary>
    /// Section 5.3.3: of the square roots of the first eight primes the first 32 bits after the point.
    /// </summary>
    private static ReadOnlySpan<uint> Start =>
        [0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];

    /// <summary>The digest of a text in UTF-8.</summary>
    /// <returns>64 lower-case hexadecimal digits.</returns>
    public static string Hex(string text) => Hex(Encoding.UTF8.GetBytes(text));

    /// <summary>The digest of bytes.</summary>
    /// <returns>64 lower-case hexadecimal digits.</returns>
    public static string Hex(ReadOnlySpan<byte> bytes)
    {
        Span<uint> state = stackalloc uint[8];
        Start.CopyTo(state);
        var whole = bytes.Length - (bytes.Length % BlockLength);
        for (var at = 0; at < whole; at += BlockLength)
            Take(bytes.Slice(at, BlockLength), state);
        TakeLast(bytes[whole..], bytes.Length, state);

        Span<byte> digest = stackalloc byte[32];
        for (var i = 0; i < state.Length; i++)
            BinaryPrimitives.WriteUInt32BigEndian(digest[(4 * i)..], state[i]);
        return Convert.ToHexStringLower(digest);
    }

    /// <summary>
    /// What is left, a bit that is set, zeros, and the length in bits: one block, or two where the length finds no
    /// room.
    /// </summary>
    private static void TakeLast(ReadOnlySpan<byte> rest, int length, Span<uint> state)
    {
        Span<byte> padded = stackalloc byte[2 * BlockLength];
        padded.Clear();
        rest.CopyTo(padded);
        padded[rest.Length] = 0x80;
        padded = padded[..(rest.Length < LengthAt ? BlockLength : 2 * BlockLength)];
        BinaryPrimitives.WriteUInt64BigEndian(padded[^8..], 8UL * (ulong)length);
        for (var at = 0; at < padded.Length; at += BlockLength)
            Take(padded.Slice(at, BlockLength), state);
    }

    /// <summary>Section 6.2.2: the sums are meant to run over.</summary>
    private static void Take(ReadOnlySpan<byte> block, Span<uint> state)
    {
        unchecked
        {
            Span<uint> schedule = stackalloc uint[64];
            for (var t = 0; t < 16; t++)
                schedule[t] = BinaryPrimitives.ReadUInt32BigEndian(block[(4 * t)..]);
            for (var t = 16; t < 64; t++)
            {
                var (near, far) = (schedule[t - 2], schedule[t - 15]);
                schedule[t] = schedule[t - 7] + schedule[t - 16]
                    + (RotateRight(near, 17) ^ RotateRight(near, 19) ^ (near >> 10))
                    + (RotateRight(far, 7) ^ RotateRight(far, 18) ^ (far >> 3));
            }

            var (a, b, c, d) = (state[0], state[1], state[2], state[3]);
            var (e, f, g, h) = (state[4], state[5], state[6], state[7]);
            for (var t = 0; t < 64; t++)
            {
                var first = h + (RotateRight(e, 6) ^ RotateRight(e, 11) ^ RotateRight(e, 25)) + ((e & f) ^ (~e & g))
                    + Constants[t] + schedule[t];
                var second = (RotateRight(a, 2) ^ RotateRight(a, 13) ^ RotateRight(a, 22))
                    + ((a & b) ^ (a & c) ^ (b & c));
                (h, g, f, e, d, c, b, a) = (g, f, e, d + first, c, b, a, first + second);
            }

            state[0] += a;
            state[1] += b;
            state[2] += c;
            state[3] += d;
            state[4] += e;
            state[5] += f;
            state[6] += g;
            state[7] += h;
        }
    }
}
