"""Least-cost paths by scikit-image over a picture of costs, and how long they take. Called by least-cost-path.ts.

    /usr/bin/python3 bench/least-cost-path.py COSTS COLUMNS ROWS RUNS  < places as JSON  > answers as JSON

COSTS holds float64 numbers row by row. Debian 12: python3-skimage 0.19.3.
"""
import json
import sys
from statistics import median
from time import process_time

import numpy as np
import skimage
from skimage.graph import MCP_Geometric, route_through_array

file, columns, rows, runs = sys.argv[1], *map(int, sys.argv[2:5])
cost = np.fromfile(file, dtype="<f8").reshape(rows, columns)


def timed(work):
    """What the work gives, and the median of its processor times in ms."""
    times = []
    for _ in range(runs):
        began = process_time()
        found = work()
        times.append(1000 * (process_time() - began))
    return found, median(times)


answers = []
for start, end in json.load(sys.stdin):
    (_, total), path_ms = timed(
        lambda: route_through_array(cost, start[::-1], end[::-1], fully_connected=True, geometric=True)
    )
    _, tree_ms = timed(lambda: MCP_Geometric(cost, fully_connected=True).find_costs([start[::-1]]))
    answers.append({"cost": float(total), "pathMs": path_ms, "treeMs": tree_ms})
print(json.dumps({"by": f"scikit-image {skimage.__version__}", "answers": answers}))
