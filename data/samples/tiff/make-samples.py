"""Small TIFFs of every form that is read, content in closed form.

    /usr/bin/python3 data/samples/tiff/make-samples.py

Debian 12: python3-pil 9.4, libtiff-tools 4.5 (tiffcp repacks what Pillow and netpbm wrote), netpbm 11.01. Grey of 8 bits is
(19 column + 7 row) mod 256, of 16 bits (5003 column + 977 row) mod 65536; colour is (v, 255 - v, v // 2). "long" is (7919 column^2 + 104729 row + 31 column row)
mod 65536 of 120 columns by 90 rows, in one strip: its LZW codes reach their greatest length and begin again.
"""
import subprocess
import tempfile
from pathlib import Path

from PIL import Image

HERE = Path(__file__).parent
COLUMNS, ROWS = 37, 29


def eight(column, row):
    return (column * 19 + row * 7) % 256


def sixteen(column, row):
    return (column * 5003 + row * 977) % 65536


def picture(mode, value, columns=COLUMNS, rows=ROWS):
    image = Image.new(mode, (columns, rows))
    image.putdata([value(column, row) for row in range(rows) for column in range(columns)])
    return image


def colour(column, row):
    value = eight(column, row)
    return (value, 255 - value, value // 2)


grey8 = picture("L", eight)
grey16 = picture("I;16", sixteen)
rgb = picture("RGB", colour)
palette = picture("P", lambda column, row: (column + row) % 16)
palette.putpalette([level for entry in range(16) for level in (entry * 16, 255 - entry * 16, entry * 8)])
bits = picture("1", lambda column, row: 255 if (column + row) % 2 == 0 else 0)


def repacked(image, name, *options):
    with tempfile.TemporaryDirectory() as folder:
        plain = Path(folder) / "plain.tif"
        image.save(plain)
        subprocess.run(["tiffcp", *options, plain, HERE / name], check=True)


repacked(grey8, "grey-8.tif", "-c", "none", "-r", "10")
repacked(grey8, "grey-8-runs.tif", "-c", "packbits", "-r", "10")
repacked(grey8, "grey-8-big-endian-lzw.tif", "-B", "-c", "lzw", "-r", "10")
repacked(grey16, "grey-16.tif", "-c", "none")
repacked(grey16, "grey-16-big-endian.tif", "-B", "-c", "none", "-r", "7")
repacked(grey16, "grey-16-lzw-differences.tif", "-c", "lzw:2", "-r", "8")
repacked(grey16, "grey-16-deflate-tiles.tif", "-c", "zip", "-t", "-w", "16", "-l", "16")
uneven = picture("I;16", lambda column, row: (column * column * 7919 + row * 104729 + column * row * 31) % 65536, 120, 90)
repacked(uneven, "grey-16-lzw-long.tif", "-c", "lzw", "-r", "90")
repacked(rgb, "rgb-8-lzw-differences.tif", "-c", "lzw:2", "-r", "5")
repacked(rgb, "rgb-8-apart.tif", "-c", "zip", "-p", "separate", "-r", "11")
repacked(rgb, "rgb-8-apart-tiles.tif", "-c", "packbits", "-p", "separate", "-t", "-w", "32", "-l", "16")
palette.save(HERE / "palette-8.tif")
bits.save(HERE / "grey-1.tif")
Image.merge("LA", (grey8, grey8)).save(HERE / "grey-alpha-8.tif")
grey8.transpose(Image.Transpose.ROTATE_90).save(HERE / "orientation-6.tif", tiffinfo={274: 6})
subprocess.run(["tiffcp", HERE / "grey-8.tif", HERE / "grey-16.tif", HERE / "two-pages.tif"], check=True)
# A film in which a larger number is darker: the same numbers, and the tag of colours says 0.
inverted = bytearray((HERE / "grey-8.tif").read_bytes())
at = inverted.index(bytes([0x06, 0x01, 3, 0, 1, 0, 0, 0]))
inverted[at + 8] = 0
(HERE / "grey-8-dark-is-high.tif").write_bytes(inverted)


def netpbm(name, mode, value, largest, *options):
    """What Pillow does not write: colour of 16 bits, grey of 4."""
    numbers = [level for row in range(ROWS) for column in range(COLUMNS) for level in value(column, row)]
    body = b"".join(level.to_bytes(1 if largest < 256 else 2, "big") for level in numbers)
    made = subprocess.run(
        ["pamtotiff", "-none"],
        input=f"{mode}\n{COLUMNS} {ROWS}\n{largest}\n".encode() + body,
        check=True,
        capture_output=True,
    ).stdout
    with tempfile.TemporaryDirectory() as folder:
        plain = Path(folder) / "plain.tif"
        plain.write_bytes(made)
        subprocess.run(["tiffcp", *options, plain, HERE / name], check=True)


def deep(column, row):
    value = sixteen(column, row)
    return (value, 65535 - value, value // 2)


netpbm("rgb-16.tif", "P6", deep, 65535, "-c", "none", "-r", "9")
netpbm("rgb-16-big-endian-deflate-differences.tif", "P6", deep, 65535, "-B", "-c", "zip:2", "-r", "9")
netpbm("rgb-16-tiles-lzw.tif", "P6", deep, 65535, "-c", "lzw", "-t", "-w", "16", "-l", "32")
netpbm("grey-4.tif", "P5", lambda column, row: (eight(column, row) // 16,), 15, "-c", "none")
repacked(grey16, "grey-16-big-endian-deflate-differences.tif", "-B", "-c", "zip:2", "-r", "9")
repacked(grey16, "grey-16-runs.tif", "-c", "packbits", "-r", "9")
repacked(grey8, "grey-8-deflate.tif", "-c", "zip", "-r", "9")
# The same picture with places of 64 bits, which is refused by name.
subprocess.run(["tiffcp", "-8", HERE / "grey-8.tif", HERE / "large.tif"], check=True)
