using System.Security.Cryptography;

namespace Ledger.Published.Tests;

/// <summary>SHA-256 against the examples of the standard and against the runtime's own.</summary>
public sealed class Sha256Tests
{
    /// <summary>The texts of one and of two blocks, and a million times the letter a.</summary>
    [Published(
        "FIPS PUB 180-2, Secure Hash Standard, National Institute of Standards and Technology, 2002, appendix B.1 to "
            + "B.3 (180-4 of 2015 refers to the same examples)", Values = 3)]
    [Fact]
    public void The_examples_of_the_standard()
    {
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Sha256.Hex("abc"));
        Assert.Equal(
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
            Sha256.Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"));
        Assert.Equal(
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0", Sha256.Hex(new string('a', 1_000_000)));
    }

    /// <summary>Each length around the ends of blocks, where the padding takes another one or not.</summary>
    [Fact]
    public void Every_length_up_to_five_blocks_agrees_with_the_runtime()
    {
        var bytes = new byte[320];
        new Random(20260831).NextBytes(bytes);
        for (var length = 0; length <= bytes.Length; length++)
            Assert.Equal(
                Convert.ToHexStringLower(SHA256.HashData(bytes.AsSpan(0, length))),
                Sha256.Hex(bytes.AsSpan(0, length)));
    }
}
