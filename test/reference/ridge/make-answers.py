"""Strength of dark lines on a small film, from SciPy's Gaussian derivatives and from scikit-image's ridge filters
(Debian 12: python3-scipy 1.10.1, python3-skimage 0.19.3).

    /usr/bin/python3 test/reference/ridge/make-answers.py

The film is in closed form: 2000 with a slope, a dark slanted line 8 pixels wide, a dark spot and a bright line.
Strength: the largest over the scales of sigma squared times the larger eigenvalue of the Hessian, over the full range.
"""
import json
from pathlib import Path

import numpy as np
import scipy
import skimage
from scipy.ndimage import gaussian_filter
from skimage.filters import meijering, sato

ROWS, COLUMNS, BITS, SCALES = 72, 80, 12, [3, 4, 6]
row, column = np.mgrid[0:ROWS, 0:COLUMNS].astype(float)
away = (column - 40) * np.cos(0.3) + (row - 36) * np.sin(0.3)
film = 2000 + 4 * column - 3 * row
film -= 900 * (np.abs(away) < 4)
film -= 500 * np.exp(-((column - 62) ** 2 + (row - 50) ** 2) / 18)
film += 700 * (np.abs(row - 14) < 3)
film = np.round(film)

strength = np.zeros_like(film)
for sigma in SCALES:
    along, mixed, across = (gaussian_filter(film, sigma, order=order) for order in ((2, 0), (1, 1), (0, 2)))
    larger = (along + across) / 2 + np.hypot((along - across) / 2, mixed)
    strength = np.maximum(strength, sigma**2 * larger / (2**BITS - 1))

answers = {
    "madeBy": f"SciPy {scipy.__version__}",
    "rows": ROWS,
    "columns": COLUMNS,
    "bitsStored": BITS,
    "scalesPx": SCALES,
    "samples": film.astype(int).ravel().tolist(),
    "strength": [round(value, 5) for value in strength.ravel().tolist()],
    "filtersBy": f"scikit-image {skimage.__version__}",
    "sato": [round(value, 5) for value in sato(film / (2**BITS - 1), sigmas=SCALES, black_ridges=True).ravel().tolist()],
    "meijering": [round(value, 4) for value in meijering(film, sigmas=SCALES, black_ridges=True).ravel().tolist()],
}
(Path(__file__).parent / "answers.json").write_text(json.dumps(answers) + "\n")
