"""Small BMPs of every form that is read, content in closed form.

    /usr/bin/python3 data/samples/bmp/make-samples.py

Debian 12: python3-pil 9.4, netpbm 11.01. Grey is (19 column + 7 row) mod 256; colour is (v, 255 - v, v // 2);
palette entry e is (16 e, 255 - 16 e, 8 e) of pixel (column + row) mod 16.
"""
import struct
import subprocess
from io import BytesIO
from pathlib import Path

from PIL import Image

HERE = Path(__file__).parent
COLUMNS, ROWS = 13, 9


def eight(column, row):
    return (column * 19 + row * 7) % 256


def colour(value):
    return (value, 255 - value, value // 2)


PLACES = [(column, row) for row in range(ROWS) for column in range(COLUMNS)]


def picture(mode, values):
    image = Image.new(mode, (COLUMNS, ROWS))
    image.putdata(values)
    return image


grey = [eight(*place) for place in PLACES]
entries = [(16 * entry, 255 - 16 * entry, 8 * entry) for entry in range(16)]
picture("L", grey).save(HERE / "grey-8.bmp")
picture("RGB", [colour(value) for value in grey]).save(HERE / "rgb-24.bmp")
picture("RGBA", [(*colour(value), 255) for value in grey]).save(HERE / "rgba-32.bmp")
picture("1", [255 if (column + row) % 2 == 0 else 0 for column, row in PLACES]).save(HERE / "grey-1.bmp")
picture("RGB", [entries[(column + row) % 16] for column, row in PLACES]).save(ppm := BytesIO(), "PPM")
for name, header in [("palette-4", "-windows"), ("palette-4-old-header", "-os2")]:
    command = ["ppmtobmp", header, "-bpp", "4"]
    bmp = subprocess.run(command, check=True, input=ppm.getvalue(), capture_output=True).stdout
    (HERE / f"{name}.bmp").write_bytes(bmp)
# From the top down, which a negative number of rows says.
rows = [b"".join(bytes(reversed(colour(eight(c, r)))) for c in range(COLUMNS)) + b"\0" * (-3 * COLUMNS % 4) for r in range(ROWS)]
header = struct.pack("<2sIHHIIiiHHIIiiII", b"BM", 54 + len(b"".join(rows)), 0, 0, 54, 40, COLUMNS, -ROWS, 1, 24, 0, 0, 0, 0, 0, 0)
(HERE / "rgb-24-top-down.bmp").write_bytes(header + b"".join(rows))
