import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { samplesOf, usualDetector } from "../../src/phantom/exposure/detector.ts";
import { attenuationPerMm, mineralPart } from "../../src/phantom/exposure/material.ts";

/** Rows of noise, one a line of pixels. */
type Rows = readonly (readonly number[])[];

const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

/** Each row less its own mean. */
const levelled = (rows: Rows): Rows => rows.map((row) => row.map((value) => value - mean(row)));

/** Power at `parts` equal bands of frequency along the rows, relative to their mean. */
function powerBands(rows: Rows, parts: number): number[] {
  const count = rows[0]?.length ?? 0;
  const half = Math.floor(count / 2);
  const power = Array.from({ length: half }, (_, k) =>
    mean(
      rows.map((row) => {
        let [re, im] = [0, 0];
        row.forEach((value, i) => {
          const turn = (2 * Math.PI * (k + 1) * i) / count;
          re += value * Math.cos(turn);
          im += value * Math.sin(turn);
        });
        return re * re + im * im;
      }),
    ),
  );
  const whole = mean(power);
  const band = half / parts;
  return Array.from(
    { length: parts },
    (_, b) => mean(power.slice(Math.floor(b * band), Math.floor((b + 1) * band))) / whole,
  );
}

function describeGrain(name: string, raw: Rows): void {
  const rows = levelled(raw);
  const all = rows.flat();
  const variance = mean(all.map((value) => value * value));
  const neighbour = mean(rows.flatMap((row) => row.slice(1).map((value, i) => value * (row[i] ?? 0)))) / variance;
  const skew = mean(all.map((value) => value ** 3)) / variance ** 1.5;
  const tails = mean(all.map((value) => value ** 4)) / variance ** 2;
  const bands = powerBands(rows, 4)
    .map((value) => value.toFixed(2))
    .join(" ");
  console.log(
    `${name}: sd of ln(signal) ${Math.sqrt(variance).toFixed(4)}, neighbours ${neighbour.toFixed(2)}, power by quarter of frequency ${bands}, skewness ${skew.toFixed(2)}, kurtosis ${tails.toFixed(2)}`,
  );
}

/** Noise of the real projections: neighbouring angles' difference in the columns that the tooth never covers. */
function realRows(folder: string): Rows {
  const bytes = readFileSync(join(folder, "sinogram_row0_181x640_f32le.raw"));
  const at = (angle: number, column: number): number => bytes.readFloatLE((angle * 640 + column) * 4);
  const open = Array.from({ length: 640 }, (_, c) => c).filter((c) =>
    Array.from({ length: 181 }, (_, a) => at(a, c)).every((value) => value < 0.15),
  );
  const last = open.filter((c) => c >= 640 - 128 && open.includes(c));
  return Array.from({ length: 180 }, (_, a) => last.map((c) => (at(a + 1, c) - at(a, c)) / Math.SQRT2));
}

/** Noise of the phantom: an evenly lit film, its samples turned back into ln(signal). */
function phantomRows(signal: number): Rows {
  const [columns, rows] = [256, 240];
  const film = (level: number): Uint16Array =>
    samplesOf(
      { columns, rows, values: new Float32Array(columns * rows).fill(level) },
      { detector: usualDetector, spacingMm: 0.04, focalBlurMm: 0.01, seed: 9 },
    );
  const middle = (samples: Uint16Array): number[][] =>
    Array.from({ length: 160 }, (_, r) =>
      Array.from(samples.subarray((r + 40) * columns + 64, (r + 40) * columns + 192)),
    );
  const perLn = (mean(middle(film(signal)).flat()) - mean(middle(film(signal * 1.02)).flat())) / Math.log(1.02);
  return middle(film(signal)).map((row) => row.map((sample) => -sample / perLn));
}

/** Prints both grains; says so and stops where the real projections are not there. */
export function compareGrain(folder: string): void {
  if (existsSync(join(folder, "sinogram_row0_181x640_f32le.raw")))
    describeGrain("real tooth's projections, beside the tooth", realRows(folder));
  else console.log(`The real projections are not in ${folder}: only the phantom's grain is shown.`);
  for (const signal of [0.6, 0.3, 0.1]) describeGrain(`phantom where ${signal} comes through`, phantomRows(signal));
  describeContrast();
}

/** Prints how much stronger the phantom's enamel stops X-rays than its dentine, to hold against a real slice's histogram. */
function describeContrast(): void {
  const stops = (mineral: number, at: number): number =>
    mineral * (attenuationPerMm.mineral[at] ?? 0) + (1 - mineral) * (attenuationPerMm.soft[at] ?? 0);
  const ratios = [30, 40, 50, 60].map(
    (keV, at) => `${(stops(mineralPart.enamel, at) / stops(mineralPart.dentine, at)).toFixed(2)} at ${keV} keV`,
  );
  console.log(`phantom, attenuation of enamel over dentine: ${ratios.join(", ")}`);
}
