"""What dcmtk and libjpeg-turbo read from the samples of data/samples, as SHA-256 of little-endian 16-bit samples.

    /usr/bin/python3 test/reference/films/make-answers.py

Debian 12: dcmtk 3.6.7 (dcmdump +W writes the raw pixels in the byte order of the machine), libjpeg-turbo-progs 2.1.5,
python3-numpy. Signed samples get 2^(bits-1) added; colour becomes 0.2126 R + 0.7152 G + 0.0722 B, rounded.
"""
import hashlib
import json
import re
import subprocess
import tempfile
from pathlib import Path

import numpy as np

HERE = Path(__file__).parent
SAMPLES = HERE.parents[2] / "data" / "samples"
DICOM = [
    "dicom-mit/CT_small.dcm",
    "dicom-mit/ExplVR_BigEnd.dcm",
    "dicom-mit/MR_small.dcm",
    "dicom-mit/MR_small_bigendian.dcm",
    "dicom-mit/MR_small_implicit.dcm",
    "dicom-mit/SC_rgb_small_odd.dcm",
    "dicom-mit/cr_mono1_imager_pixel_spacing_16x16.dcm",
    "dicom-mit/image_dfl.dcm",
    "dicom-synthetic/io_deflated.dcm",
    "dicom-synthetic/io_rod.dcm",
]
JPEG = ["grey", "grey-progressive", "grey-restart", "colour", "colour-subsampled"]


def luminance(red, green, blue):
    return np.floor(0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.5)


def answer(samples, rows, columns):
    packed = np.asarray(samples, dtype="<u2").tobytes()
    return {"columns": columns, "rows": rows, "sha256": hashlib.sha256(packed).hexdigest()}


def tag(file, name):
    out = subprocess.run(["dcmdump", "+P", name, file], check=True, capture_output=True, text=True).stdout
    found = re.search(r"US (\d+)", out)
    return int(found.group(1)) if found else 0


def of_dicom(file):
    rows, columns, bits = tag(file, "Rows"), tag(file, "Columns"), tag(file, "BitsAllocated")
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["dcmdump", "+W", folder, file], check=True, capture_output=True)
        raw = next(Path(folder).iterdir()).read_bytes()
    values = np.frombuffer(raw, dtype="<u2" if bits == 16 else "u1").astype(np.int64)
    if tag(file, "SamplesPerPixel") == 3:
        planes = values[: rows * columns * 3]
        planes = planes.reshape(3, -1) if tag(file, "PlanarConfiguration") == 1 else planes.reshape(-1, 3).T
        return answer(luminance(*planes), rows, columns)
    stored = tag(file, "BitsStored")
    values = values & (2**stored - 1)
    if tag(file, "PixelRepresentation") == 1:
        values = values ^ 2 ** (stored - 1)
    return answer(values[: rows * columns], rows, columns)


def of_jpeg(file):
    pnm = subprocess.run(["djpeg", "-dct", "int", "-pnm", file], check=True, capture_output=True).stdout
    kind, columns, rows = re.match(rb"(P[56])\s(\d+) (\d+)\s255\s", pnm).groups()
    columns, rows = int(columns), int(rows)
    body = np.frombuffer(pnm, dtype="u1", offset=len(pnm) - columns * rows * (3 if kind == b"P6" else 1))
    samples = luminance(*body.reshape(-1, 3).T.astype(float)) if kind == b"P6" else body
    return answer(samples, rows, columns)


def shown(center, width):
    """SHA-256 of the grey levels that dcm2pnm shows the rod with."""
    file = str(SAMPLES / "dicom-synthetic" / "io_rod.dcm")
    command = ["dcm2pnm", "+op", "+Ww", str(center), str(width), file]
    pgm = subprocess.run(command, check=True, capture_output=True).stdout
    size = tag(file, "Rows") * tag(file, "Columns")
    return {"center": center, "width": width, "sha256": hashlib.sha256(pgm[-size:]).hexdigest()}


windows = [shown(*window) for window in [(2048, 4096), (2000, 1000), (2601, 2), (2601, 1), (1500, 777)]]
(HERE / "windows.json").write_text(json.dumps(windows, indent=1) + "\n")
answers = {name: of_dicom(str(SAMPLES / name)) for name in DICOM}
answers |= {f"jpeg/{name}.jpg": of_jpeg(str(SAMPLES / "jpeg" / f"{name}.jpg")) for name in JPEG}
(HERE / "answers.json").write_text(json.dumps(answers, indent=1) + "\n")
