"""Strength of dark lines on a small film, from SciPy's Gaussian derivatives and from scikit-image's ridge filters
(Debian 12: python3-scipy 1.10.1, python3-skimage 0.19.3).

    /usr/bin/python3 test/reference/ridge/make-answers.py

The film is in closed form: 2000 with a slope, a dark slanted line 8 pixels wide, a dark spot and a bright line.
Strength: the largest over the scales of sigma squared times the larger eigenvalue of the Hessian, over the full range,
times twice the smaller over the sum of the rises of grey 2 sigma to either side, along the eigenvector, between pixels.
"bend" is the same without the rises.
"""
import json
from pathlib import Path

import numpy as np
import scipy
import skimage
from scipy.ndimage import gaussian_filter, map_coordinates
from skimage.filters import sato

ROWS, COLUMNS, BITS, SCALES = 72, 80, 12, [3, 4, 6]
row, column = np.mgrid[0:ROWS, 0:COLUMNS].astype(float)
away = (column - 40) * np.cos(0.3) + (row - 36) * np.sin(0.3)
film = 2000 + 4 * column - 3 * row
film -= 900 * (np.abs(away) < 4)
film -= 500 * np.exp(-((column - 62) ** 2 + (row - 50) ** 2) / 18)
film += 700 * (np.abs(row - 14) < 3)
film = np.round(film)


def line(sigma):
    """How much the grey bends at one scale, and how evenly it rises to both sides."""
    along, mixed, across = (gaussian_filter(film, sigma, order=order) for order in ((2, 0), (1, 1), (0, 2)))
    hessian = np.stack([np.stack([across, mixed], -1), np.stack([mixed, along], -1)], -1)
    values, vectors = np.linalg.eigh(hessian)
    right, down = vectors[..., 0, 1], vectors[..., 1, 1]
    smooth = gaussian_filter(film, sigma)
    one, other = (
        map_coordinates(smooth, [row + way * 2 * sigma * down, column + way * 2 * sigma * right], order=1, mode="nearest")
        - smooth
        for way in (1, -1)
    )
    smaller = np.clip(np.minimum(one, other), 0, None)
    evenness = np.divide(2 * smaller, one + other, out=np.zeros_like(smaller), where=smaller > 0)
    bend = np.clip(sigma**2 * values[..., 1] / (2**BITS - 1), 0, None)
    return bend, bend * evenness


bend, strength = (np.max(every, axis=0) for every in zip(*(line(sigma) for sigma in SCALES)))

answers = {
    "madeBy": f"SciPy {scipy.__version__}",
    "rows": ROWS,
    "columns": COLUMNS,
    "bitsStored": BITS,
    "scalesPx": SCALES,
    "samples": film.astype(int).ravel().tolist(),
    "strength": [round(value, 5) for value in strength.ravel().tolist()],
    "bend": [round(value, 5) for value in bend.ravel().tolist()],
    "filtersBy": f"scikit-image {skimage.__version__}",
    "sato": [round(value, 5) for value in sato(film / (2**BITS - 1), sigmas=SCALES, black_ridges=True).ravel().tolist()],
}
(Path(__file__).parent / "answers.json").write_text(json.dumps(answers) + "\n")
