"""What dcmtk and libjpeg-turbo read from the samples of data/samples, as SHA-256 of little-endian 16-bit samples.

    /usr/bin/python3 test/reference/films/make-answers.py

Debian 12: dcmtk 3.6.7 (dcmdjpeg, dcmdjpls and dcmdrle unpack; dcmdump +W writes the raw pixels in the byte order of the
machine), libgdcm-tools 3.0.21 (gdcmconv unpacks JPEG 2000), libjpeg-turbo-progs 2.1.5, python3-numpy, python3-pil.
Signed samples get 2^(bits-1) added; colour becomes 0.2126 R + 0.7152 G + 0.0722 B, rounded; a modality table is applied.
Where decoders may round differently, the samples themselves are kept in lossy/.
"""
import hashlib
import json
import re
import subprocess
import tempfile
from pathlib import Path

import numpy as np
from PIL import Image

HERE = Path(__file__).parent
SAMPLES = HERE.parents[2] / "data" / "samples"
DICOM = sorted(str(file.relative_to(SAMPLES)) for file in SAMPLES.glob("dicom-*/*.dcm"))
# Broken or without a picture of one frame: what is said of them stands in the tests.
REFUSED = ["MR_truncated", "UN_sequence", "emri_small_RLE", "JPEG2000-embedded-sequence-delimiter"]
LOSSY = ["JPGExtended", "SC_rgb_jpeg_dcmtk", "io_jpeg_baseline8", "io_jpeg_extended12", "extended-12", "extended-8"]
LOSSY += ["baseline-rgb", "baseline-ybr", "baseline-ybr-422"]
UNPACKERS = {
    "RLE": ["dcmdrle"],
    "JPEGLS": ["dcmdjpls"],
    "JPEG2000": ["gdcmconv", "--raw"],
    "JPEG": ["dcmdjpeg"],
}
JPEG = ["grey", "grey-progressive", "grey-restart", "colour", "colour-subsampled"]


def luminance(red, green, blue):
    return np.floor(0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.5)


def answer(samples, rows, columns):
    packed = np.asarray(samples, dtype="<u2").tobytes()
    return {"columns": columns, "rows": rows, "sha256": hashlib.sha256(packed).hexdigest()}


def keep(name, samples, rows, columns):
    """The samples of a lossy file as a PNG of 16 bits."""
    (HERE / "lossy").mkdir(exist_ok=True)
    Image.fromarray(np.asarray(samples, dtype="u2").reshape(rows, columns)).save(HERE / "lossy" / f"{name}.png")
    return {"columns": columns, "rows": rows}


def unpacked(file, folder):
    syntax = subprocess.run(["dcmdump", "+P", "TransferSyntaxUID", file], check=True, capture_output=True, text=True)
    program = next((UNPACKERS[kind] for kind in UNPACKERS if f"={kind}" in syntax.stdout), None)
    if program is None:
        return file
    subprocess.run([*program, file, f"{folder}/unpacked"], check=True)
    return f"{folder}/unpacked"


def through_table(values, file):
    """What the modality table of a file makes of signed values."""
    out = subprocess.run(["dcmdump", "+L", "+P", "ModalityLUTSequence", file], check=True, capture_output=True, text=True).stdout
    if "LUTData" not in out:
        return None
    first = int(re.search(r"\(0028,3002\) \S+ \d+\\(-?\d+)", out).group(1))
    table = np.array([int(number) for number in re.search(r"\(0028,3006\) US (\S+)", out).group(1).split("\\")])
    return table[np.clip(values - first, 0, len(table) - 1)]


def tag(file, name):
    out = subprocess.run(["dcmdump", "+P", name, file], check=True, capture_output=True, text=True).stdout
    found = re.search(r"US (\d+)", out)
    return int(found.group(1)) if found else 0


def of_dicom(packed):
    with tempfile.TemporaryDirectory() as folder:
        file = unpacked(packed, folder)
        subprocess.run(["dcmdump", "+W", folder, file], check=True, capture_output=True)
        raw = next(Path(folder).glob("*.raw")).read_bytes()
        rows, columns, bits = tag(file, "Rows"), tag(file, "Columns"), tag(file, "BitsAllocated")
        stored, signed = tag(file, "BitsStored"), tag(file, "PixelRepresentation") == 1
        channels, apart = tag(file, "SamplesPerPixel"), tag(file, "PlanarConfiguration") == 1
    values = np.frombuffer(raw, dtype="<u2" if bits == 16 else "u1").astype(np.int64)[: rows * columns * channels]
    if channels == 3:
        values = luminance(*(values.reshape(3, -1) if apart else values.reshape(-1, 3).T))
    else:
        values = values & (2**stored - 1)
        values = values ^ 2 ** (stored - 1) if signed else values
        mapped = through_table(values - (2 ** (stored - 1) if signed else 0), packed)
        values = values if mapped is None else mapped
    name = Path(packed).stem
    return keep(name, values, rows, columns) if name in LOSSY else answer(values, rows, columns)


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


def looked(name, *options):
    """SHA-256 of the grey levels that dcm2pnm shows a file with that has a table."""
    file = str(SAMPLES / "dicom-mit" / f"{name}.dcm")
    pgm = subprocess.run(["dcm2pnm", "+op", *options, file], check=True, capture_output=True).stdout
    return hashlib.sha256(pgm[-tag(file, "Rows") * tag(file, "Columns") :]).hexdigest()


looks = {"mlut_18": looked("mlut_18", "+Ww", "32768", "65536"), "vlut_04": looked("vlut_04", "+Wl", "1")}
(HERE / "tables.json").write_text(json.dumps(looks, indent=1) + "\n")
windows = [shown(*window) for window in [(2048, 4096), (2000, 1000), (2601, 2), (2601, 1), (1500, 777)]]
(HERE / "windows.json").write_text(json.dumps(windows, indent=1) + "\n")
answers = {name: of_dicom(str(SAMPLES / name)) for name in DICOM if Path(name).stem not in REFUSED}
answers |= {f"jpeg/{name}.jpg": of_jpeg(str(SAMPLES / "jpeg" / f"{name}.jpg")) for name in JPEG}
(HERE / "answers.json").write_text(json.dumps(answers, indent=1) + "\n")
