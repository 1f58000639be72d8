"""What dcmtk, gdcm, libjpeg-turbo and netpbm read from the samples of data/samples, as SHA-256 of little-endian 16-bit
samples, each with the program that read it.

    /usr/bin/python3 test/reference/films/make-answers.py

Debian 12: dcmtk 3.6.7 (dcmdjpeg, dcmdjpls and dcmdrle unpack; dcmdump +W writes the raw pixels in the byte order of the
machine), libgdcm-tools 3.0.21 (gdcmconv unpacks JPEG 2000), libjpeg-turbo-progs 2.1.5, libtiff-tools 4.5, netpbm 11.01, python3-numpy,
python3-pil.
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
JPEG = ["grey", "grey-progressive", "grey-restart", "colour", "colour-subsampled", "colour-progressive"]
JPEG += ["one-pixel"]
# Those that netpbm does not read (an opacity beside grey, places of 64 bits, several pages), and a palette of 8 bits
# written in the high bytes of 16, which it divides by 257.
CR = "dicom-mit/cr_mono1_imager_pixel_spacing_16x16.dcm"
NOT_NETPBM = ["grey-alpha-8.tif", "large.tif", "two-pages.tif", "palette-8.tif"]
VERSIONS = {"gdcm": "gdcm 3.0.21", "dcm": "dcmtk 3.6.7", "djpeg": "libjpeg-turbo 2.1.5", "topnm": "netpbm 11.01"}


def luminance(red, green, blue):
    return np.floor(0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.5)


def said(program, rows, columns, packing=None):
    oracle = next(f"{name}, {program}" for part, name in VERSIONS.items() if part in program)
    return {"columns": columns, "rows": rows, "by": oracle} | ({"packing": packing} if packing else {})


def answer(samples, about):
    packed = np.asarray(samples, dtype="<u2").tobytes()
    return about | {"sha256": hashlib.sha256(packed).hexdigest()}


def keep(name, samples, about):
    """The samples of a lossy file as a PNG of 16 bits."""
    (HERE / "lossy").mkdir(exist_ok=True)
    kept = np.asarray(samples, dtype="u2").reshape(about["rows"], about["columns"])
    Image.fromarray(kept).save(HERE / "lossy" / f"{name}.png")
    return about


def packing_of(file):
    out = subprocess.run(["dcmdump", "+P", "TransferSyntaxUID", file], check=True, capture_output=True, text=True).stdout
    found = re.search(r"UI =(\S+)", out)
    return found.group(1) if found else "LittleEndianImplicit"


def unpacked(file, folder):
    program = next((UNPACKERS[kind] for kind in UNPACKERS if packing_of(file).startswith(kind)), None)
    if program is None:
        return file, "dcmdump"
    subprocess.run([*program, file, f"{folder}/unpacked"], check=True)
    return f"{folder}/unpacked", program[0]


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
        file, program = unpacked(packed, folder)
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
    name, about = Path(packed).stem, said(program, rows, columns, packing_of(packed))
    return keep(name, values, about) if name in LOSSY else answer(values, about)


def of_pnm(pnm):
    """Grey samples, rows and columns of a picture of netpbm, whatever its depth."""
    kind, columns, rows = re.match(rb"(P[456])\s(\d+) (\d+)\s", pnm).groups()
    head = re.match(rb"P[56]\s\d+ \d+\s(\d+)\s" if kind != b"P4" else rb"P4\s\d+ \d+\s()", pnm)
    body, columns, rows = pnm[head.end() :], int(columns), int(rows)
    if kind == b"P4":
        bits = np.unpackbits(np.frombuffer(body, dtype="u1").reshape(rows, -1), axis=1)[:, :columns]
        return 1 - bits, rows, columns
    values = np.frombuffer(body, dtype="u1" if int(head.group(1)) < 256 else ">u2").astype(float)
    grey = luminance(*values.reshape(-1, 3).T) if kind == b"P6" else values
    return grey.reshape(rows, columns), rows, columns


def of_tiff(file):
    """tifftopnm keeps the depth of strips alone; so libtiff's own tiffcp makes strips of what may be tiles."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["tiffcp", "-s", "-c", "none", str(file), f"{folder}/strips.tif"], check=True)
        made = of_picture(f"{folder}/strips.tif", "tifftopnm", "-byrow")
    return made | {"by": "libtiff 4.5 and " + made["by"]}


def of_picture(file, *command):
    pnm = subprocess.run([*command, str(file)], check=True, capture_output=True).stdout
    samples, rows, columns = of_pnm(pnm)
    # pngtopnm leaves the orientation alone; the one sample that has one is turned a quarter.
    if "png/orientation-6" in str(file):
        samples, rows, columns = np.rot90(samples, -1), columns, rows
    # A palette of black and white alone is written as bits.
    if "bmp/grey-1" in str(file):
        samples = samples * 255
    return answer(samples.ravel(), said(command[0], rows, columns))


def shown(center, width, file="dicom-synthetic/io_rod.dcm", curve="linear"):
    """SHA-256 of the grey levels that dcm2pnm shows a film with."""
    file, option = str(SAMPLES / file), "+Wfl" if curve == "linear" else "+Wfs"
    command = ["dcm2pnm", "+op", "+Ww", str(center), str(width), option, file]
    pgm = subprocess.run(command, check=True, capture_output=True).stdout
    grey = pgm[-tag(file, "Rows") * tag(file, "Columns") :]
    # Under a rescale with parts dcm2pnm rounds twice: one step apart, so the greys themselves are kept.
    kept = {"slope": 0.684, "intercept": 200, "greys": list(grey)} if file.endswith(CR) else {}
    return kept | {
        "film": str(Path(file).relative_to(SAMPLES)),
        "center": center,
        "width": width,
        "function": curve,
        "sha256": hashlib.sha256(grey).hexdigest(),
    }


def looked(name, *options):
    """SHA-256 of the grey levels that dcm2pnm shows a file with that has a table."""
    file = str(SAMPLES / "dicom-mit" / f"{name}.dcm")
    pgm = subprocess.run(["dcm2pnm", "+op", *options, file], check=True, capture_output=True).stdout
    return hashlib.sha256(pgm[-tag(file, "Rows") * tag(file, "Columns") :]).hexdigest()


looks = {"mlut_18": looked("mlut_18", "+Ww", "32768", "65536"), "vlut_04": looked("vlut_04", "+Wl", "1")}
(HERE / "tables.json").write_text(json.dumps(looks, indent=1) + "\n")
windows = [shown(*window) for window in [(2048, 4096), (2000, 1000), (2601, 2), (2601, 1), (1500, 777)]]
windows += [shown(center, width, curve="sigmoid") for center, width in [(2048, 4096), (2000, 1000), (1500, 7)]]
windows += [shown(1650, 300, CR, curve) for curve in ("linear", "sigmoid")]
(HERE / "windows.json").write_text(json.dumps(windows, separators=(",", ":")) + "\n")
answers = {name: of_dicom(str(SAMPLES / name)) for name in DICOM if Path(name).stem not in REFUSED}
answers |= {f"jpeg/{name}.jpg": of_picture(SAMPLES / "jpeg" / f"{name}.jpg", "djpeg", "-dct", "int", "-pnm") for name in JPEG}
for kind, ending, read in [
    ("png", "png", lambda file: of_picture(file, "pngtopnm")),
    ("tiff", "tif", of_tiff),
    ("bmp", "bmp", lambda file: of_picture(file, "bmptopnm")),
]:
    files = sorted(file for file in (SAMPLES / kind).glob(f"*.{ending}") if file.name not in NOT_NETPBM)
    answers |= {f"{kind}/{file.name}": read(file) for file in files}
(HERE / "answers.json").write_text(json.dumps(answers, indent=1) + "\n")
