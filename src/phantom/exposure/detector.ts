import { seededRandom } from "../seeded-random.ts";
import { blurred, enlargedAt, type Picture, reduced } from "./blur.ts";

/** How the receptor turns what comes through into samples. */
export interface Detector {
  /** Standard deviation of the receptor's own blur. */
  readonly blurMm: number;
  /** Size of the focal spot; its blur is this times (tooth to receptor / source to tooth). */
  readonly focalSpotMm: number;
  /** Part of the mean signal around that scatter adds everywhere. */
  readonly scatterPart: number;
  /** Quanta counted in a pixel that nothing covers; noise falls with its root. */
  readonly quantaPerPixel: number;
  /** Standard deviation of the readout's own noise, in quanta. */
  readonly readoutQuanta: number;
  /** What comes through where the film is just black, and where it is just white. */
  readonly blackAt: number;
  readonly whiteAt: number;
  /** Below 1 lifts the middle greys. */
  readonly gamma: number;
}

/**
 * A usual intra-oral sensor: pixels of 0.04 mm, a needle scintillator, 12 bits, logarithmic output with a shoulder.
 * @source common practice
 */
export const usualDetector: Detector = {
  blurMm: 0.042,
  focalSpotMm: 0.7,
  scatterPart: 0.14,
  quantaPerPixel: 9000,
  readoutQuanta: 12,
  blackAt: 0.66,
  whiteAt: 0.07,
  gamma: 0.92,
};

/** The grain is finer than the picture: quanta are counted at every depth of the scintillator, and only the far ones spread in full. */
const grainOfBlur = 0.5;
const scatterBlock = 16;
const scatterReachMm = 7;

/** Light scattered in the tissue: a faint, very blurred copy of the film over the film. */
function withScatter(picture: Picture, detector: Detector, spacingMm: number): Picture {
  const small = reduced(picture, scatterBlock);
  const haze = blurred(small, scatterReachMm / spacingMm / scatterBlock);
  const values = new Float32Array(picture.values.length);
  for (let row = 0; row < picture.rows; row++)
    for (let column = 0; column < picture.columns; column++) {
      const at = row * picture.columns + column;
      const hazeHere = enlargedAt(haze, scatterBlock, column, row);
      values[at] = ((picture.values[at] as number) + detector.scatterPart * hazeHere) / (1 + detector.scatterPart);
    }
  return { ...picture, values };
}

/** Random numbers of the normal law, one a pixel, with unit variance: `correlated` ones share the scintillator's blur. */
function grain(picture: Picture, seed: number, sigmaPx: number): Picture {
  const random = seededRandom(seed);
  const white = { ...picture, values: new Float32Array(picture.values.length).map(() => random.normal()) };
  if (sigmaPx < 0.2) return white;
  const soft = blurred(white, sigmaPx);
  let square = 0;
  for (const value of soft.values) square += value * value;
  const scale = Math.sqrt(soft.values.length / square);
  return { ...soft, values: soft.values.map((value) => value * scale) };
}

/** Counted quanta: the mean with its noise, partly shared with the neighbours through the scintillator. */
function counted(picture: Picture, detector: Detector, seed: number, spacingMm: number): Picture {
  const shared = grain(picture, seed, (detector.blurMm / spacingMm) * grainOfBlur);
  const own = grain(picture, seed + 7919, 0);
  const values = new Float32Array(picture.values.length);
  for (let at = 0; at < values.length; at++) {
    const mean = (picture.values[at] as number) * detector.quantaPerPixel;
    const quantum = Math.sqrt(mean) * (shared.values[at] as number);
    values[at] = (mean + quantum + detector.readoutQuanta * (own.values[at] as number)) / detector.quantaPerPixel;
  }
  return { ...picture, values };
}

/** Sample of a signal: logarithm between black and white, a rounded toe and shoulder, 12 bits. */
function sampleOf(signal: number, detector: Detector): number {
  const range = Math.log(detector.blackAt / detector.whiteAt);
  const grey = Math.log(detector.blackAt / Math.max(signal, 1e-5)) / range;
  const toe = grey <= 0.03 ? 0.03 * Math.exp((grey - 0.03) / 0.03) : grey;
  const shoulder = toe <= 0.8 ? toe : 1 - 0.2 * Math.exp(-(toe - 0.8) / 0.2);
  return 4095 * shoulder ** detector.gamma;
}

/** 1 inside the sensor's active area, falling to 0 over its rounded edge. */
function insideEdge(column: number, row: number, size: { columns: number; rows: number; spacingMm: number }): number {
  const cornerPx = 1.3 / size.spacingMm;
  const marginPx = 0.1 / size.spacingMm;
  const qx = Math.abs(column - (size.columns - 1) / 2) - (size.columns / 2 - marginPx - cornerPx);
  const qy = Math.abs(row - (size.rows - 1) / 2) - (size.rows / 2 - marginPx - cornerPx);
  const outside = Math.hypot(Math.max(qx, 0), Math.max(qy, 0)) + Math.min(Math.max(qx, qy), 0) - cornerPx;
  return Math.min(1, Math.max(0, 0.5 - outside));
}

/** The samples (12 bits, brighter where less comes through) that a receptor gives for what comes through. */
export function samplesOf(
  through: Picture,
  exposure: { detector: Detector; spacingMm: number; focalBlurMm: number; seed: number },
): Uint16Array {
  const { detector, spacingMm, focalBlurMm, seed } = exposure;
  const sigmaMm = Math.hypot(detector.blurMm, focalBlurMm);
  const signal = counted(
    withScatter(blurred(through, sigmaMm / spacingMm), detector, spacingMm),
    detector,
    seed,
    spacingMm,
  );
  const size = { columns: through.columns, rows: through.rows, spacingMm };
  const samples = new Uint16Array(signal.values.length);
  for (let row = 0; row < through.rows; row++)
    for (let column = 0; column < through.columns; column++) {
      const at = row * through.columns + column;
      const sample = sampleOf(signal.values[at] as number, detector) * insideEdge(column, row, size);
      samples[at] = Math.min(4095, Math.max(0, Math.round(sample)));
    }
  return samples;
}
