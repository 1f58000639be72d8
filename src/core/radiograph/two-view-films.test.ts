import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { answer } from "../topic.ts";
import { twoViewTopic } from "./two-view-topic.ts";

const path = fileURLToPath(new URL("../../../data/demo/films/films.json", import.meta.url));
const pair = z.tuple([z.number(), z.number()]);
const film = z.looseObject({
  file: z.string(),
  horizontalAngleDeg: z.number(),
  verticalAngleDeg: z.number(),
  receptor: z.enum(["turnsWithBeam", "fixed"]),
  uRunsTo: z.enum(["distal", "mesial"]),
  sourceToToothMm: z.number(),
  toothToDetectorMm: z.number(),
  detectorSpacingMm: z.number(),
  columns: z.number(),
  rows: z.number(),
  magnification: z.number(),
  truth: z.looseObject({
    canals: z.record(z.string(), z.array(pair)),
    canalsMm: z.record(z.string(), z.array(z.tuple([z.number(), z.number(), z.number()]))),
    lengthsMm: z.record(z.string(), z.number()),
  }),
});
type Film = z.infer<typeof film>;

const films = existsSync(path) ? z.array(film).parse(JSON.parse(readFileSync(path, "utf8"))) : [];
const named = (name: string): Film => {
  const found = films.find(({ file }) => file === `${name}.png`);
  if (found === undefined) throw new Error(`${name} is not among the demo's films`);
  return found;
};

/** The demo's films are projected by their own code from a tooth whose canals are known; nothing of it is shared with this topic. */
describe.skipIf(films.length === 0)("films of a known tooth (data/demo/films)", () => {
  const detector = (one: Film, canal: string) => ({
    horizontalAngleDeg: one.horizontalAngleDeg,
    verticalAngleDeg: one.verticalAngleDeg,
    uRunsTo: one.uRunsTo,
    points: (one.truth.canals[canal] ?? []).map(([u, v]): [number, number] => [
      (u - (one.columns - 1) / 2) * one.detectorSpacingMm,
      (v - (one.rows - 1) / 2) * one.detectorSpacingMm,
    ]),
  });

  it.each(["DL", "MB", "ML", "D"])("canal %s comes back place by place, counted from the central ray", (canal) => {
    const [straight, angled] = [named("b-day-0-straight"), named("b-day-0-mesial-25")];
    const { points = [], lengthMm = 0 } = answer(twoViewTopic, {
      views: [straight, angled].map((one) => detector(one, canal)),
      receptor: "turnsWithBeam",
      units: "detectorMm",
      geometry: {
        sourceToToothMm: straight.sourceToToothMm,
        toothToDetectorMm: straight.toothToDetectorMm,
        centralRayMm: 0,
      },
      countedFrom: "input",
      sigmaMm: 0.02,
    });
    const truth = straight.truth.canalsMm[canal] ?? [];
    expect(points).toHaveLength(truth.length);
    // Film places are kept to 0.01 px, 0.0004 mm; depth makes of that 3.2 times as much. The central ray meets the tooth at
    // x 0.5 and z 5.6 mm.
    points.forEach(([x, y, z], index) => {
      const [tx = 0, ty = 0, tz = 0] = truth[index] ?? [];
      expect(Math.hypot(x + 0.5 - tx, y - ty, z + 5.6 - tz)).toBeLessThan(0.005);
    });
    expect(Math.abs(lengthMm - (straight.truth.lengthsMm[canal] ?? 0))).toBeLessThan(0.1);
  });

  it("the third root: its bend is almost invisible on the straight film, lies to lingual and turns to buccal", () => {
    const [straight, angled] = [named("b-day-0-straight"), named("b-day-0-mesial-25")];
    const inTooth = (one: Film, canal: string) => {
      const scale = one.detectorSpacingMm / one.magnification;
      const mmOf = ([u, v]: readonly [number, number]): [number, number] => [u * scale, v * scale];
      const { horizontalAngleDeg, verticalAngleDeg, uRunsTo, truth } = one;
      const landmarks = { "orifice of D": mmOf(truth.canals.D?.[0] ?? [0, 0]) };
      return {
        horizontalAngleDeg,
        verticalAngleDeg,
        uRunsTo,
        landmarks,
        points: (truth.canals[canal] ?? []).map(mmOf),
      };
    };
    const found = answer(twoViewTopic, { views: [straight, angled].map((one) => inTooth(one, "DL")), sigmaMm: 0.04 });
    expect(found).toMatchObject({ liesSide: "lingual", side: "buccal" });
    // Parallel rays for a tube at 300 mm: the places are off by up to depth / 300, 0.02 times 12 mm.
    expect(Math.abs((found.lengthMm ?? 0) - (straight.truth.lengthsMm.DL ?? 0))).toBeLessThan(0.25);
    expect(found.hiddenDeg).toBeGreaterThan(25);
    expect(found.apparent[0]).toBeLessThan(15);
  });
});
