"""Makes the JPEG samples of this folder from known content. Debian 12: python3-pil, libjpeg-turbo-progs.

    /usr/bin/python3 data/samples/jpeg/make-samples.py

The picture is 48 columns by 32 rows and in closed form: grey 40 + 3 * column + row, and a bright block of 12 columns
by 8 rows in the upper left corner, so that no turn or mirror of it looks like another.
"""
import subprocess
from pathlib import Path

from PIL import Image

FOLDER = Path(__file__).parent
COLUMNS, ROWS = 48, 32


def grey(column, row):
    return 250 if column < 12 and row < 8 else 40 + 3 * column + row


def upright():
    picture = Image.new("L", (COLUMNS, ROWS))
    picture.putdata([grey(column, row) for row in range(ROWS) for column in range(COLUMNS)])
    return picture


# How an upright picture is turned so that the orientation turns it back.
TURNS = {
    1: None,
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_90,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_270,
}

for orientation, turn in TURNS.items():
    stored = upright() if turn is None else upright().transpose(turn)
    exif = Image.Exif()
    exif[0x0112] = orientation
    stored.save(FOLDER / f"orientation-{orientation}.jpg", quality=100, exif=exif)

upright().save(FOLDER / "grey.pgm")
colour = Image.merge("RGB", [upright(), upright().point(lambda g: g // 2), upright().point(lambda g: 255 - g)])
colour.save(FOLDER / "colour.ppm")
MADE = {
    "grey.jpg": ["-grayscale", "-quality", "95", "grey.pgm"],
    "grey-progressive.jpg": ["-grayscale", "-progressive", "-quality", "95", "grey.pgm"],
    "grey-restart.jpg": ["-grayscale", "-restart", "1", "-quality", "95", "grey.pgm"],
    "grey-arithmetic.jpg": ["-grayscale", "-arithmetic", "-quality", "95", "grey.pgm"],
    "colour.jpg": ["-sample", "1x1", "-quality", "95", "colour.ppm"],
    "colour-progressive.jpg": ["-progressive", "-sample", "2x1", "-quality", "90", "colour.ppm"],
    "colour-subsampled.jpg": ["-sample", "2x2", "-quality", "90", "colour.ppm"],
}
for name, arguments in MADE.items():
    subprocess.run(["cjpeg", *arguments[:-1], "-outfile", name, arguments[-1]], cwd=FOLDER, check=True)
Image.new("L", (1, 1), 200).save(FOLDER / "one-pixel.jpg", quality=100)
for name in ("grey.pgm", "colour.ppm"):
    (FOLDER / name).unlink()
