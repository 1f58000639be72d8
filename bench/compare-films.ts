import { encodePng16 } from "../src/imaging/encode-png16.ts";
import { comparingHere } from "../src/server/comparing/comparing-here.ts";
import { boneLike, type FilmMaking, filmOf } from "../test/bone-like-film.ts";
import { type Measured, machine, tableOf } from "./timing.ts";

const size = { columns: 1_500, rows: 1_200 };
/** The second film is taken from 3 degrees aside, turned and shifted a little. */
const seenFromAside = [1.004, 0.012, -9, -0.011, 1.002, 14, 4e-6, -2e-6, 1] as const;
const places = [
  [200, 180],
  [1_280, 210],
  [1_240, 1_010],
  [230, 980],
  [760, 600],
] as const;

function file(making: Partial<FilmMaking>): Uint8Array {
  const { grey } = filmOf(boneLike(11), { ...size, noise: 0.01, ...making });
  const samples = Uint16Array.from(grey, (share) => Math.round(4_095 * share));
  const technical = { sourceFormat: "png", wasColour: false, lossy: false } as const;
  return encodePng16({ ...size, bitsStored: 12, samples, photometric: "MONOCHROME2", technical });
}

const [a, b, c, d, e, f, g, h] = seenFromAside;
const landmarks = places.map(([u, v], index) => {
  const depth = g * u + h * v + 1;
  // Each is clicked 2 px off, in turn to the right and to the left.
  const off = index % 2 === 0 ? 2 : -2;
  return { before: [u, v], after: [(a * u + b * v + c) / depth + off, (d * u + e * v + f) / depth - off] };
});

/** How long two films of 1,500 x 1,200 px take to be compared, from their files to the pictures: by the clock and of one core. */
export async function bench(): Promise<void> {
  const where = machine();
  const films = { before: file({ seed: 1 }), after: file({ seed: 2, map: seenFromAside }) };
  const input = { landmarks, lesions: {}, sigmaPx: 1 };
  const [clock, core]: [number[], number[]] = [[], []];
  const parts = new Map<string, number[]>();
  for (let run = 0; run < 5; run += 1) {
    const [start, used] = [performance.now(), process.cpuUsage()];
    let last: { says: string; at: number } | undefined;
    const end = () => {
      if (last !== undefined) parts.set(last.says, [...(parts.get(last.says) ?? []), (coreMs(used) - last.at) / 1_000]);
    };
    await comparingHere(
      { input, ...films },
      (_fraction, says) => {
        end();
        last = { says, at: coreMs(used) };
      },
      new AbortController().signal,
    );
    end();
    clock.push((performance.now() - start) / 1_000);
    core.push(coreMs(used) / 1_000);
  }
  const all: Measured[] = [
    { name: "two films compared, by the clock", unit: "s", values: clock },
    { name: "the same, of one core", unit: "s", values: core },
    ...[...parts].map(
      ([says, values]): Measured => ({ name: `  ${says.toLowerCase()}, of one core`, unit: "s", values }),
    ),
  ];
  console.log(`\n${tableOf(all)}\n\nOn ${where}.`);
}

function coreMs(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1_000;
}
