"""Flat fields and reconstructed slice of a real tooth, as figures to hold the phantom against (docs/methods/phantom.md).

Use: python3 scripts/demo/compare-real-tooth.py FOLDER   (Debian: python3-h5py); says so where the folder is not there.
"""
import os
import sys

folder = sys.argv[1] if len(sys.argv) > 1 else "../shared/data/tooth_tomography_bsd3"
if not os.path.exists(os.path.join(folder, "tooth.h5")):
    sys.exit(f"Not compared: {folder} holds no tooth.h5")
import h5py
import numpy as np


def bands(rows):
    """Power at four equal bands of frequency along the rows, relative to their mean."""
    power = (np.abs(np.fft.rfft(rows, axis=1)) ** 2).mean(axis=0)[1:]
    return " ".join(f"{part.mean() / power.mean():.2f}" for part in np.array_split(power, 4))


with h5py.File(os.path.join(folder, "tooth.h5"), "r") as file:
    white = file["exchange/data_white"][:].astype(float)
    dark = file["exchange/data_dark"][:].astype(float).mean(axis=0)
noise = np.diff(np.log(white - dark), axis=0).reshape(-1, white.shape[-1]) / np.sqrt(2)
noise -= noise.mean(axis=1, keepdims=True)
neighbours = (noise[:, 1:] * noise[:, :-1]).mean() / noise.var()
kurtosis = (noise**4).mean() / noise.var() ** 2
print(f"flat fields: sd of ln(signal) {noise.std():.4f}, neighbours {neighbours:.2f}, power {bands(noise)}, kurtosis {kurtosis:.2f}")

raw = np.fromfile(os.path.join(folder, "reconstruction_row0_640x640_u16le.raw"), dtype="<u2")
slice_ = (raw / 65535 * 0.014 - 0.002).reshape(640, 640)
counts, edges = np.histogram(slice_, bins=70, range=(0.0, 0.014))
middles = (edges[1:] + edges[:-1]) / 2
smooth = np.convolve(counts, np.ones(3) / 3, mode="same")
peaks = [i for i in range(1, 69) if smooth[i] >= smooth[i - 1] and smooth[i] > smooth[i + 1] and smooth[i] > 150]
print("slice, peaks of the histogram (attenuation per pixel, pixels):", ", ".join(f"{middles[i]:.4f} {int(smooth[i])}" for i in peaks))
