import { part, sampleParts } from "../../../test/sample-case.ts";
import { type BodyOf, type Part, partsOf } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import type { BindingContext } from "../binding.ts";

type Film = BodyOf<"film">;
type Trace = Extract<BodyOf<"mark">, { shape: "trace" }>;
type Row = BodyOf<"visit">["instruments"][number];

/** A film of the sample's kind: taken on a day for a purpose. */
export const filmPart = (id: string, own: Partial<Film>): Part => {
  const [sample] = partsOf(sampleParts(), "film");
  if (sample === undefined) throw new Error("the sample has a film");
  return part("film", id, { ...sample.body, ...own });
};

/** A canal traced on a film from `[10, 20]` down, ten pixels a step. */
export const tracePart = (id: string, film: string, own: Partial<Trace> = {}): Part =>
  part("mark", id, {
    ...{ shape: "trace", film, canal: "MB1", polarity: "dark", sigmaPx: 2 },
    anchors: [
      [10, 20],
      [10, 60],
    ],
    points: [0, 1, 2, 3, 4].map((step) => [10, 20 + 10 * step]),
    ...own,
  });

/** What the ledger would have said of such traces and films: 0.1 mm a pixel, 12 mm of canal, a bend of 30 degrees. */
export function outputsOf(parts: readonly Part[], lengthMm = 12): Record<string, unknown> {
  const traces = partsOf(parts, "mark").filter(({ body }) => body.shape === "trace");
  const scale = { mmPerPx: { column: 0.1, row: 0.1 }, used: "knownLength" };
  return Object.fromEntries([
    ...partsOf(parts, "film").map(({ id }) => [`calibrate of ${id}`, scale]),
    ...traces.map(({ id }) => [`curvature of ${id}`, { lengthMm, pruettDeg: 30, totalTurnDeg: 33 }]),
  ]);
}

/** A case as bindings read it; the entry about a subject is called by it. */
export const contextOf = (parts: readonly Part[], outputs: Readonly<Record<string, unknown>>): BindingContext => ({
  ...{ parts, settings: firstSettings },
  earlier: (subject) =>
    outputs[subject] === undefined ? undefined : { entryId: `<${subject}>`, output: outputs[subject] },
});

/** A driven instrument of size 25, taper .06, as a visit's row holds it: 20 s at 300 a minute, 18 mm from the reference point. */
export const rowOf = (own: Partial<Row> = {}): Row => ({
  ...{ canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
  ...{ rpm: 300, seconds: 20, depthMm: 18 },
  ...own,
});

/** A visit with rows of instruments, in whose table the working length of MB1 is 19 mm. */
export function visitPart(id: string, instruments: readonly Row[], own: Partial<BodyOf<"visit">> = {}): Part {
  const [sample] = partsOf(sampleParts(), "visit");
  if (sample === undefined) throw new Error("the sample has a visit");
  const canals = sample.body.canals.map((row) => ({ ...row, workingLengthMm: 19 }));
  return part("visit", id, { ...sample.body, on: "2024-03-05", canals, instruments: [...instruments], ...own });
}

type Mishap = BodyOf<"mishap">;
/** A broken instrument of size 25, taper .06 in MB1 at `visit-1`, its tip 18 mm deep. */
export const mishapPart = (
  id: string,
  own: Partial<Mishap> = {},
  more: Partial<NonNullable<Mishap["separated"]>> = {},
) =>
  part("mishap", id, {
    ...{ on: "2024-03-05", visit: "visit-1", what: "separatedInstrument", canal: "MB1" },
    instrument: { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
    ...{ third: "notRecorded", bend: "notRecorded", handled: "open", toldPatient: "told", story: "" },
    separated: {
      ...{ tipDepthMm: 18, signs: [], tipBound: "notKnown", stoppedAtTorqueLimit: "notKnown" },
      ...{ headSeen: "notLooked", stage: "notRecorded" },
      ...more,
    },
    ...own,
  });
