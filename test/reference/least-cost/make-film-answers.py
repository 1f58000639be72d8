"""A canal's least-cost course on a piece of a film of the demo, answered by scikit-image and SciPy (Debian 12:
python3-skimage 0.19.3, python3-scipy 1.10.1).

    /usr/bin/python3 test/reference/least-cost/make-film-answers.py

The piece is cut from data/demo/films/b-day-0-straight.png about a canal. Its lines are found with SciPy's Gaussian
derivatives (see ../ridge/make-answers.py), each as a share of the strongest, and cost 0.05 / (0.05 + share), rounded to
six decimals. route_through_array walks to eight neighbours and weighs a step by its length and the mean of the two costs.
"""
import json
from pathlib import Path

import numpy as np
import skimage
from scipy.ndimage import gaussian_filter
from skimage.graph import route_through_array
from skimage.io import imread

HERE = Path(__file__).parent
FILMS = HERE.parents[2] / "data/demo/films"
FILM, CANAL, MARGIN, SCALES = "b-day-0-straight.png", "D", 24, [2, 4, 8]

truth = next(one for one in json.loads((FILMS / "films.json").read_text()) if one["file"] == FILM)
course = np.array(truth["truth"]["canals"][CANAL])
first, last = course.min(axis=0).astype(int) - MARGIN, course.max(axis=0).astype(int) + MARGIN
film = imread(FILMS / FILM).astype(float)[first[1] : last[1], first[0] : last[0]]

strength = np.zeros_like(film)
for sigma in SCALES:
    along, mixed, across = (gaussian_filter(film, sigma, order=order) for order in ((2, 0), (1, 1), (0, 2)))
    larger = (along + across) / 2 + np.hypot((along - across) / 2, mixed)
    strength = np.maximum(strength, sigma**2 * larger)
cost = np.round(0.05 / (0.05 + strength / strength.max()), 6)

places = [np.rint(course[index] - first).astype(int).tolist() for index in (0, len(course) // 2, -1)]
legs = [
    route_through_array(cost, start[::-1], end[::-1], fully_connected=True, geometric=True)
    for start, end in zip(places, places[1:])
]
answers = {
    "madeBy": f"scikit-image {skimage.__version__}",
    "film": FILM,
    "canal": CANAL,
    "column": int(first[0]),
    "row": int(first[1]),
    "columns": cost.shape[1],
    "rows": cost.shape[0],
    "places": places,
    "legCosts": [float(total) for _, total in legs],
    "straightThrough": float(route_through_array(cost, places[0][::-1], places[-1][::-1])[1]),
    "costMillionths": np.rint(cost * 1e6).astype(int).ravel().tolist(),
}
(HERE / "film-answers.json").write_text(json.dumps(answers, separators=(",", ":")) + "\n")
print(cost.shape, answers["legCosts"], answers["straightThrough"], places)
