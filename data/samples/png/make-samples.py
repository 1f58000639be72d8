"""Makes the PNG samples of this folder from known content. Debian 12: python3-pil, python3-numpy, netpbm.

    /usr/bin/python3 data/samples/png/make-samples.py

13 columns by 9 rows (no multiple of 8, so that the passes of an interlaced file are uneven), in closed form:
v = (column * 19 + row * 7) mod 256 for 8 bits and (column * 5003 + row * 977) mod 65536 for 16 bits.
Fewer bits: v of 8 bits divided by 64 (2 bits) or 16 (4 bits). Colour: red v, green 255 - v, blue v / 2 rounded down. Palette: entry i is the colour of v = 16 i; index (column + row) mod 16.
"""
import subprocess
from pathlib import Path

import numpy as np
from PIL import Image

FOLDER = Path(__file__).parent
row, column = np.mgrid[0:9, 0:13]
eight = ((column * 19 + row * 7) % 256).astype("u1")
sixteen = ((column * 5003 + row * 977) % 65536).astype("u2")
colour = np.stack([eight, 255 - eight, eight // 2], axis=-1)
alpha = np.full_like(eight, 255)
alpha[0, 0] = 0

Image.fromarray(eight).save(FOLDER / "grey-8.png")
Image.fromarray(sixteen).save(FOLDER / "grey-16.png")
Image.fromarray(colour, "RGB").save(FOLDER / "rgb-8.png")
Image.fromarray(np.dstack([colour, alpha]), "RGBA").save(FOLDER / "rgba-8.png")
Image.fromarray(np.dstack([eight, alpha]), "LA").save(FOLDER / "grey-alpha-8.png")
Image.fromarray(((column + row) % 2 == 0)).save(FOLDER / "grey-1.png")

indexed = Image.fromarray(((column + row) % 16).astype("u1"), "P")
indexed.putpalette(sum(([16 * i, 255 - 16 * i, 8 * i] for i in range(16)), []))
indexed.save(FOLDER / "palette-4.png", bits=4)

exif = Image.Exif()
exif[0x0112] = 6
Image.fromarray(eight).transpose(Image.Transpose.ROTATE_90).save(FOLDER / "orientation-6.png", exif=exif)


def netpbm(name, magic, samples, *options, largest=None):
    largest = largest or (255 if samples.dtype.itemsize == 1 else 65535)
    head = f"{magic}\n13 9\n{largest}\n".encode()
    body = samples.astype(samples.dtype.newbyteorder(">")).tobytes()
    made = subprocess.run(["pnmtopng", *options], input=head + body, check=True, capture_output=True)
    (FOLDER / name).write_bytes(made.stdout)


netpbm("grey-8-interlaced.png", "P5", eight, "-force", "-interlace")
netpbm("grey-16-interlaced.png", "P5", sixteen, "-force", "-interlace")
netpbm("rgb-16.png", "P6", np.stack([sixteen, 65535 - sixteen, sixteen // 2], axis=-1), "-force")
netpbm("rgb-8-interlaced.png", "P6", colour, "-force", "-interlace", "-paeth")
netpbm("grey-2.png", "P5", eight // 64, "-force", largest=3)
netpbm("grey-4.png", "P5", eight // 16, "-force", largest=15)
# 117 colours, which the writer keeps as a palette of 8 bits.
distinct = np.stack([(row * 13 + column).astype("u1"), 255 - eight, eight // 2], axis=-1)
netpbm("palette-8-interlaced.png", "P6", distinct, "-interlace")
