"""Small DICOM files of noise in the forms of JPEG and fragments that the other samples lack.

    /usr/bin/python3 data/samples/dicom-jpeg/make-samples.py

Debian 12: dcmtk 3.6.7 (dcmcjpeg, dcmcjpls, dcmcrle, dcmdjpeg), libgdcm-tools 3.0.21, python3-numpy. Noise on a slope, by a generator of fixed seed.
dcmcjpeg writes no restart marks and no components scan by scan; those two files are packed here, and dcmdjpeg has to
give the noise back.
"""
import subprocess
import tempfile
from pathlib import Path

import numpy as np

HERE = Path(__file__).parent
COLUMNS, ROWS = 23, 17
EXPLICIT, LOSSLESS = "1.2.840.10008.1.2.1", "1.2.840.10008.1.2.4.57"
random = np.random.default_rng(20260101)


def noise(bits, channels=1, columns=COLUMNS, rows=ROWS):
    slope = np.linspace(0.1, 0.8, columns)[None, :, None] * np.linspace(0.6, 1, rows)[:, None, None]
    values = (slope + 0.1 * random.random((rows, columns, channels))) * (2**bits - 1)
    return values.astype("<u2")


def element(group, number, kind, value):
    if isinstance(value, int):
        value = value.to_bytes(2, "little")
    elif isinstance(value, str):
        value = value.encode() + (b"" if len(value) % 2 == 0 else (b"\0" if kind == "UI" else b" "))
    head = group.to_bytes(2, "little") + number.to_bytes(2, "little") + kind.encode()
    if kind in ("OB", "OW"):
        return head + b"\0\0" + len(value).to_bytes(4, "little") + value
    return head + len(value).to_bytes(2, "little") + value


def encapsulated(stream):
    item = b"\xfe\xff\x00\xe0"
    stream += b"\0" * (len(stream) % 2)
    body = item + bytes(4) + item + len(stream).to_bytes(4, "little") + stream + b"\xfe\xff\xdd\xe0" + bytes(4)
    return b"\xe0\x7f\x10\x00OB\0\0\xff\xff\xff\xff" + body


def dicom(samples, bits, signed=0, syntax=EXPLICIT, stream=None):
    rows, columns, channels = samples.shape
    allocated = 8 if bits <= 8 else 16
    storage = "1.2.840.10008.5.1.4.1.1.7"
    meta = element(2, 1, "OB", b"\0\1") + element(2, 2, "UI", storage) + element(2, 3, "UI", "1.2.3.4")
    meta += element(2, 0x10, "UI", syntax) + element(2, 0x12, "UI", "1.2.3")
    body = element(8, 0x16, "UI", storage) + element(8, 0x18, "UI", "1.2.3.4") + element(8, 0x60, "CS", "OT")
    body += element(0x28, 2, "US", channels) + element(0x28, 4, "CS", "RGB" if channels == 3 else "MONOCHROME2")
    if channels == 3:
        body += element(0x28, 6, "US", 0)
    body += element(0x28, 0x10, "US", rows) + element(0x28, 0x11, "US", columns)
    body += element(0x28, 0x100, "US", allocated) + element(0x28, 0x101, "US", bits)
    body += element(0x28, 0x102, "US", bits - 1) + element(0x28, 0x103, "US", signed)
    if stream is None:
        raw = samples.astype("u1" if allocated == 8 else "<u2").tobytes()
        body += element(0x7FE0, 0x10, "OB" if allocated == 8 else "OW", raw + b"\0" * (len(raw) % 2))
    else:
        body += encapsulated(stream)
    length = element(2, 0, "UL", len(meta).to_bytes(4, "little"))
    return bytes(128) + b"DICM" + length + meta + body


def packed(name, program, samples, bits, *options, signed=0):
    with tempfile.TemporaryDirectory() as folder:
        plain = Path(folder) / "plain.dcm"
        plain.write_bytes(dicom(samples, bits, signed))
        subprocess.run([program, *options, plain, HERE / f"{name}.dcm"], check=True)


PREDICTORS = [
    None,
    lambda left, up, corner: left,
    lambda left, up, corner: up,
    lambda left, up, corner: corner,
    lambda left, up, corner: left + up - corner,
    lambda left, up, corner: left + ((up - corner) >> 1),
    lambda left, up, corner: up + ((left - corner) >> 1),
    lambda left, up, corner: (left + up) >> 1,
]


def coded(planes, predictor, bits, rows_between):
    """The coded data of one scan: every difference behind a code of five bits that says its length."""
    rows, columns = planes[0].shape
    parts, text = [], ""
    for row in range(rows):
        begins = row % rows_between == 0
        if begins and row > 0:
            parts.append(text)
            text = ""
        for column in range(columns):
            for plane in planes:
                value = int(plane[row, column])
                left, up = int(plane[row, column - 1]), int(plane[row - 1, column])
                if begins:
                    guess = 2 ** (bits - 1) if column == 0 else left
                else:
                    guess = up if column == 0 else PREDICTORS[predictor](left, up, int(plane[row - 1, column - 1]))
                difference = (value - guess + 32768) % 65536 - 32768
                length = 16 if difference == -32768 else abs(difference).bit_length()
                text += f"{length:05b}"
                if 0 < length < 16:
                    text += f"{difference if difference > 0 else difference + 2**length - 1:0{length}b}"
    parts.append(text)
    stream = b""
    for nth, part in enumerate(parts):
        part += "1" * (-len(part) % 8)
        data = int(part, 2).to_bytes(len(part) // 8, "big").replace(b"\xff", b"\xff\0")
        stream += data + (bytes([0xFF, 0xD0 + nth % 8]) if nth + 1 < len(parts) else b"")
    return stream


def lossless(samples, predictor, bits, rows_between, interleaved):
    rows, columns, channels = samples.shape
    size = rows.to_bytes(2, "big") + columns.to_bytes(2, "big")
    frame = bytes([bits]) + size + bytes([channels]) + b"".join(bytes([c + 1, 0x11, 0]) for c in range(channels))
    table = b"\0" + bytes([0, 0, 0, 0, 17] + [0] * 11) + bytes(range(17))
    interval = (rows_between * columns).to_bytes(2, "big") if rows_between < rows else b"\0\0"

    def segment(code, body):
        return bytes([0xFF, code]) + (len(body) + 2).to_bytes(2, "big") + body

    stream = b"\xff\xd8" + segment(0xC3, frame) + segment(0xC4, table) + segment(0xDD, interval)
    for scan in [range(channels)] if interleaved else [[c] for c in range(channels)]:
        head = bytes([len(scan)]) + b"".join(bytes([c + 1, 0]) for c in scan) + bytes([predictor, 0, 0])
        stream += segment(0xDA, head) + coded([samples[:, :, c] for c in scan], predictor, bits, rows_between)
    return stream + b"\xff\xd9"


def packed_here(name, samples, bits, predictor, rows_between, interleaved):
    stream = lossless(samples, predictor, bits, rows_between, interleaved)
    file = HERE / f"{name}.dcm"
    file.write_bytes(dicom(samples, bits, 0, LOSSLESS, stream))
    with tempfile.TemporaryDirectory() as folder:
        plain = Path(folder) / "plain.dcm"
        subprocess.run(["dcmdjpeg", file, plain], check=True)
        subprocess.run(["dcmdump", "+W", folder, plain], check=True, capture_output=True)
        raw = next(Path(folder).glob("*.raw")).read_bytes()
    found = np.frombuffer(raw, "u1" if bits <= 8 else "<u2")[: samples.size]
    assert np.array_equal(found, samples.reshape(-1).astype(found.dtype)), name


for selection in range(1, 8):
    packed(f"lossless-16-predictor-{selection}", "dcmcjpeg", noise(16), 16, "+el", "+sv", str(selection))
packed("lossless-12-signed", "dcmcjpeg", noise(12), 12, "+el", "+sv", "4", signed=1)
packed("lossless-12-shortened", "dcmcjpeg", noise(12), 12, "+el", "+sv", "5", "+pt", "2")
packed("lossless-8", "dcmcjpeg", noise(8), 8, "+el", "+sv", "7")
packed("lossless-rgb", "dcmcjpeg", noise(8, 3), 8, "+el", "+sv", "6")
packed("lossless-16-fragments", "dcmcjpeg", noise(16, 1, 50, 40), 16, "+e1", "+fs", "1")
packed("extended-12", "dcmcjpeg", noise(12), 12, "+ee", "+q", "90")
packed("extended-8", "dcmcjpeg", noise(8), 8, "+ee", "+q", "90")
packed("baseline-rgb", "dcmcjpeg", noise(8, 3), 8, "+eb", "+cr", "+q", "90")
packed("baseline-ybr-422", "dcmcjpeg", noise(8, 3), 8, "+eb", "+cy", "+s2", "+q", "90")
packed("rle-rgb", "dcmcrle", noise(8, 3), 8)
packed("rle-12", "dcmcrle", noise(12), 12)
packed("ls-rgb", "dcmcjpls", noise(8, 3), 8, "+el")
packed("ls-rgb-by-component", "dcmcjpls", noise(8, 3), 8, "+el", "+in")
packed("baseline-ybr", "dcmcjpeg", noise(8, 3), 8, "+eb", "+cy", "+s4", "+q", "90")
packed("2000-rgb", "gdcmconv", noise(8, 3), 8, "--j2k")
packed("2000-16-signed", "gdcmconv", noise(16), 16, "--j2k", signed=1)
packed_here("lossless-16-restarts", noise(16), 16, 5, 2, True)
packed_here("lossless-rgb-restarts", noise(8, 3), 8, 4, 3, True)
packed_here("lossless-rgb-by-component", noise(8, 3), 8, 7, ROWS, False)
