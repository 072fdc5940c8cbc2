"""Turns a window dump of 32 bits a pixel into a PNG; python3 alone, no library."""

import struct
import sys
import zlib


def read(path):
    """Width, height and rows of RGB; the header is that of XWDFile.h, version 7."""
    with open(path, "rb") as file:
        dump = file.read()
    header = struct.unpack(">25I", dump[:100])
    size, width, height, order, bits, line, colours = header[0], header[4], header[5], header[7], header[11], header[12], header[19]
    if header[1] != 7 or bits != 32 or order != 0:
        raise SystemExit(f"{path}: a dump of {bits} bits a pixel is not read here")
    at = size + 12 * colours
    rows = []
    for y in range(height):
        row = dump[at + y * line : at + y * line + 4 * width]
        rgb = bytearray(3 * width)
        rgb[0::3], rgb[1::3], rgb[2::3] = row[2::4], row[1::4], row[0::4]
        rows.append(bytes(rgb))
    return width, height, rows


def write(path, rows):
    """Writes rows of RGB as PNG (ISO/IEC 15948)."""
    width = len(rows[0]) // 3

    def chunk(name, data):
        return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))

    with open(path, "wb") as file:
        file.write(b"\x89PNG\r\n\x1a\n")
        file.write(chunk(b"IHDR", struct.pack(">2I5B", width, len(rows), 8, 2, 0, 0, 0)))
        file.write(chunk(b"IDAT", zlib.compress(b"".join(b"\0" + row for row in rows))))
        file.write(chunk(b"IEND", b""))


if __name__ == "__main__":
    _, _, picture = read(sys.argv[1])
    write(sys.argv[2], picture)
