"""Least costs over a small image, answered by scikit-image (Debian 12: python3-skimage 0.19.3).

    /usr/bin/python3 test/reference/least-cost/make-answers.py

MCP_Geometric walks to eight neighbours and weighs a step by its length and the mean of the two costs.
"""
import json
from pathlib import Path

import numpy as np
import skimage
from skimage.graph import MCP_Geometric, route_through_array

ROWS, COLUMNS = 17, 23
START = (3, 5)
END = (14, 20)

random = np.random.default_rng(20260101)
cost = np.round(random.uniform(0.05, 1.0, (ROWS, COLUMNS)) ** 3 + 0.01, 6)
totals, _ = MCP_Geometric(cost, fully_connected=True).find_costs([START])
path, total = route_through_array(cost, START, END, fully_connected=True, geometric=True)

answers = {
    "madeBy": f"scikit-image {skimage.__version__}",
    "rows": ROWS,
    "columns": COLUMNS,
    "start": START[0] * COLUMNS + START[1],
    "end": END[0] * COLUMNS + END[1],
    "cost": cost.ravel().tolist(),
    "costTo": [round(value, 12) for value in totals.ravel().tolist()],
    "path": [int(row * COLUMNS + column) for row, column in path],
    "pathCost": round(float(total), 12),
}
(Path(__file__).parent / "answers.json").write_text(json.dumps(answers) + "\n")
