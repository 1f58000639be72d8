import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { calibrateBinding } from "./calibrate.ts";
import { tubeShiftBinding } from "./tube-shift.ts";
import { twoViewBinding } from "./two-view.ts";

const sample = sampleParts().find((one) => one.kind === "film");
if (sample?.kind !== "film") throw new Error("the sample has a film");
const body = sample.body;

const film = (id: string, change: Partial<BodyOf<"film">> = {}): Part =>
  part("film", id, { ...body, horizontalAngleDeg: 0, uRunsTo: "distal", receptor: "turnsWithBeam", ...change });

/** A canal that bends to buccal by 40 degrees on 5 mm, 0.05 mm a pixel, on a film under an angle; `flat` along the film. */
function trace(id: string, on: string, angleDeg: number, { canal = "DL", flat = false, sigmaPx = 0.4 } = {}): Part {
  const a = (angleDeg * Math.PI) / 180;
  const points = Array.from({ length: 30 }, (_, index): [number, number] => {
    const s = 0.5 * index;
    const turn = Math.min(Math.max(s - 8, 0), 3.49) / 5;
    const rest = Math.max(0, s - 11.49);
    const aside = 5 * (1 - Math.cos(turn)) + rest * Math.sin(turn);
    const z = Math.min(s, 8) + 5 * Math.sin(turn) + rest * Math.cos(turn);
    return [300 + (aside * (flat ? Math.cos(a) : Math.sin(a))) / 0.05, 100 + z / 0.05];
  });
  const anchors: [number, number][] = [points[0] ?? [0, 0], points.at(-1) ?? [0, 0]];
  return part("mark", id, { ...{ shape: "trace", film: on, canal, polarity: "dark" }, sigmaPx, anchors, points });
}

const derived = (parts: readonly Part[]) =>
  deriveLedger(
    { caseId: "case-sample", parts, settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
    [calibrateBinding, twoViewBinding, tubeShiftBinding],
  ).filter(({ topic }) => topic === "tubeShift");

describe("the next film of a traced canal", () => {
  it("is worked out from the one film that shows it", () => {
    const [entry, ...others] = derived([film("film-1"), trace("trace-1", "film-1", 0)]);
    expect(others).toEqual([]);
    expect(entry?.subject).toBe("tubeShift of DL film-1");
    expect(entry?.input).toMatchObject({
      receptor: "turnsWithBeam",
      sigmaMm: expect.closeTo(0.02, 9),
      wanted: { outOfFilmDeg: 20 },
    });
    expect(entry?.output).toMatchObject({ recommended: { why: expect.stringContaining("20 degrees out") } });
    expect(entry?.inputPaths.map(({ record }) => record)).toEqual(
      expect.arrayContaining(["film-1/receptor", "film-1/horizontalAngleDeg", "trace-1/points", "trace-1/sigmaPx"]),
    );
  });

  it("of several films of one angle, from the last; nearest to straight on", () => {
    const parts = [
      ...[film("film-1"), trace("trace-1", "film-1", 0)],
      ...[film("film-2"), trace("trace-2", "film-2", 0)],
      ...[film("film-3", { horizontalAngleDeg: 20, takenOn: "2020-03-04" }), trace("trace-3", "film-3", 20)],
    ];
    expect(derived(parts).map(({ subject }) => subject)).toEqual(["tubeShift of DL film-2"]);
  });

  it("is asked again of films whose shift is too small, and of none that settle it", () => {
    const both = (angleDeg: number, change = {}) => [
      ...[film("film-1"), trace("trace-1", "film-1", 0, change)],
      ...[film("film-2", { horizontalAngleDeg: angleDeg }), trace("trace-2", "film-2", angleDeg, change)],
    ];
    expect(derived(both(6)).map(({ subject }) => subject)).toEqual(["tubeShift of DL film-1 film-2"]);
    expect(derived(both(6))[0]?.output).toMatchObject({ now: { settles: false } });
    expect(derived(both(25))).toEqual([]);
    expect(derived(both(25, { flat: true }))).toEqual([]);
    // With points as unsure as 0.4 mm the two films leave the bend open.
    expect(derived(both(12, { flat: true, sigmaPx: 8 }))[0]?.subject).toBe("tubeShift of DL film-1 film-2");
  });

  it("where the two films refuse, from the straighter one", () => {
    const parts = [
      ...[film("film-1"), trace("trace-1", "film-1", 0)],
      ...[film("film-2", { horizontalAngleDeg: 25, receptor: "fixed" }), trace("trace-2", "film-2", 25)],
    ];
    expect(derived(parts).map(({ subject }) => subject)).toEqual(["tubeShift of DL film-1"]);
  });

  it("is not asked without an angle, a scale or a side of the film, nor of a film of the filled canal", () => {
    const { horizontalAngleDeg: _, ...unsaid } = film("film-1").body as BodyOf<"film">;
    const alone = (one: Part) => derived([one, trace("trace-1", "film-1", 0)]);
    expect(alone(part("film", "film-1", unsaid))).toEqual([]);
    expect(alone(film("film-1", { uRunsTo: "unknown" }))).toEqual([]);
    const { detectorSpacingMm: _d, pixelSpacingMm: _p, ...technical } = body.technical;
    expect(alone(film("film-1", { technical }))).toEqual([]);
    expect(alone(film("film-1", { purpose: "final" }))).toEqual([]);
  });
});
