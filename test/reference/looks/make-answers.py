"""Local contrast and sharpening of a small film, from scikit-image (Debian 12: python3-skimage 0.19.3).

    /usr/bin/python3 test/reference/looks/make-answers.py

The film is in closed form: a slope, a dark slanted line, a bright disc and a fine pattern, of 12 bits. Its sides are four
regions of an odd number of pixels each, so that no region is padded and the middle of each is a pixel.
Local contrast: what exposure.equalize_adapthist does before it stretches its answer, from 0 at black to 1. It counts the step of grey that a pixel falls into
wholly as below it; so the mean is taken of it and of what the negative gives, which counts that step as above.
It also takes the pixel after a region's middle for its middle; so the mean is taken over the film and its mirrors. Once without a clip and once
with one: there it deals out up to twice what it cut off, because it adds whole pixels to every second or to every step.
Sharpening: filters.unsharp_mask of the film as shares of its full range.
"""
import json
from pathlib import Path

import numpy as np
import skimage
from skimage.exposure._adapthist import NR_OF_GRAY, _clahe
from skimage.filters import unsharp_mask

REGIONS, BITS, CLIP, RADIUS, AMOUNT = 4, 12, 0.03, 2, 1.5
GREYS = NR_OF_GRAY - 1
ROWS, COLUMNS = REGIONS * 29, REGIONS * 31
row, column = np.mgrid[0:ROWS, 0:COLUMNS].astype(float)
away = (column - 40) * np.cos(0.3) + (row - 36) * np.sin(0.3)
film = 1200 + 7 * column + 5 * row
film -= 700 * (np.abs(away) < 4)
film += 1100 * np.exp(-((column - 62) ** 2 + (row - 50) ** 2) / 120)
film += 60 * np.sin(column / 1.7) * np.sin(row / 2.3)
film = np.round(film).astype(np.uint16)



def equal(of, clip):
    shares = (of - of.min()) / (of.max() - of.min())
    return _clahe(np.round(shares * GREYS).astype(np.uint16), (29, 31), clip, 256) / GREYS


def both(clip):
    negative = film.max() - film + film.min()
    flips = [(slice(None, None, down), slice(None, None, across)) for down in (1, -1) for across in (1, -1)]
    return np.mean([[equal(film[flip], clip)[flip], 1 - equal(negative[flip], clip)[flip]] for flip in flips], axis=(0, 1))


even, clipped = both(1), both(CLIP)
shares = film / (2**BITS - 1)
sharpened = unsharp_mask(shares, radius=RADIUS, amount=AMOUNT, preserve_range=True)

answers = {
    "madeBy": f"scikit-image {skimage.__version__}",
    "rows": ROWS,
    "columns": COLUMNS,
    "bitsStored": BITS,
    "regions": REGIONS,
    "clip": CLIP,
    "radiusPx": RADIUS,
    "amount": AMOUNT,
    "samples": film.astype(int).ravel().tolist(),
    "even": [round(value, 4) for value in even.ravel().tolist()],
    "clipped": [round(value, 4) for value in clipped.ravel().tolist()],
    "sharpened": [round(value, 4) for value in sharpened.ravel().tolist()],
}
(Path(__file__).parent / "answers.json").write_text(json.dumps(answers) + "\n")
