import { cpus, loadavg, platform, release, totalmem } from "node:os";

/** What was measured, run by run. */
export interface Measured {
  readonly name: string;
  readonly unit: "s" | "ms" | "frames/s";
  readonly values: readonly number[];
}

/** Measures something several times, one run after the other. */
export async function measured(
  name: string,
  unit: Measured["unit"],
  runs: number,
  run: () => Promise<number>,
): Promise<Measured> {
  const values: number[] = [];
  for (let count = 0; count < runs; count += 1) values.push(await run());
  return { name, unit, values };
}

/** How long a piece of work takes, in milliseconds. */
export async function millisecondsOf(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** The middle one of sorted values, or the mean of the two in the middle. */
export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [low = Number.NaN, high = Number.NaN] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[half]];
  return (low + high) / 2;
}

/** The measurements as a table of text: median, lowest and highest, runs. */
export function tableOf(all: readonly Measured[]): string {
  const rows = all.map(({ name, unit, values }) => {
    const text = (value: number): string => value.toFixed(unit === "s" ? 2 : value < 10 ? 1 : 0);
    const ends = `${text(Math.min(...values))} to ${text(Math.max(...values))}`;
    return [name, `${text(medianOf(values))} ${unit}`, ends, String(values.length)];
  });
  const lines = [["measured", "median", "lowest to highest", "runs"], ...rows];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...lines.map((line) => line[column]?.length ?? 0)));
  return lines
    .map((line) =>
      line
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

/** The machine on which it was measured. */
export function machine(): string {
  const [first] = cpus();
  const gigabytes = (totalmem() / 2 ** 30).toFixed(0);
  const [load = 0] = loadavg();
  return `${cpus().length} x ${first?.model.trim() ?? "unknown processor"}, ${gigabytes} GB, ${platform()} ${release()}, Node ${process.versions.node}, load ${load.toFixed(1)} at the start`;
}
