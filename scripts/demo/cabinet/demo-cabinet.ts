import type { CabinetGesture, CabinetOperation } from "../../../src/record/cabinet/cabinet-gesture.ts";
import type { CabinetItemOf, CabinetKind } from "../../../src/record/cabinet/cabinet-item.ts";
import { demoFiles } from "./demo-files.ts";
import { demoStock } from "./demo-stock.ts";
import { demoTemplates } from "./demo-templates.ts";

type Instrument = CabinetItemOf<"instrument">["body"];

const demo = true as const;
const put = <Kind extends CabinetKind>(kind: Kind, id: string, body: CabinetItemOf<Kind>["body"]): CabinetOperation =>
  ({ op: "put", id, kind, baseRevision: 0, body }) as CabinetOperation;

const hand = (size: number): CabinetOperation => {
  const number = String(size).padStart(2, "0");
  return put("instrument", `demo-hand-${number}`, {
    ...{ name: `Hand file ${number}`, size, taper: 0.02, workingMm: 16, lengthMm: 25, section: "square" },
    ...{ alloy: "stainlessSteel", movement: "hand", seconds: 60, demo },
  });
};

const turning = (id: string, own: Pick<Instrument, "size" | "taper"> & Partial<Instrument>): CabinetOperation =>
  put("instrument", id, {
    ...{ name: `Rotary ${own.size} .${String(Math.round(own.taper * 100)).padStart(2, "0")}`, lengthMm: 25 },
    ...{ workingMm: 16, section: "convexTriangle", alloy: "nickelTitanium", movement: "continuous" },
    ...{ rpm: 300, torqueLimitNmm: 20, seconds: 15 },
    ...own,
    demo,
  });

const instruments: readonly CabinetOperation[] = [
  ...[8, 10, 15, 20].map(hand),
  turning("demo-17-04", { size: 17, taper: 0.04, torqueLimitNmm: 15, seconds: 10, note: "Of no size of the series." }),
  turning("demo-20-04", { size: 20, taper: 0.04, limits: { uses: 3, canals: 10 } }),
  turning("demo-25-04", { size: 25, taper: 0.04, limits: { uses: 2, canals: 8, sterilisations: 4 } }),
  turning("demo-25-06", { size: 25, taper: 0.06, limits: { uses: 3, turns: 900 } }),
  turning("demo-30-04", { size: 30, taper: 0.04, torqueLimitNmm: 25 }),
  put("instrument", "demo-25-variable", {
    ...{ name: "Reciprocating 25", size: 25, taper: 0.08, lengthMm: 25, section: "s", demo },
    profile: [
      { atMm: 0, diameterMm: 0.25 },
      { atMm: 3, diameterMm: 0.49 },
      { atMm: 8, diameterMm: 0.77 },
      { atMm: 16, diameterMm: 1.05 },
    ],
    ...{ alloy: "heatTreatedNickelTitanium", movement: "reciprocating", seconds: 40 },
    reciprocation: { forwardDeg: 160, backDeg: 40, frequencyHz: 5 },
    limits: { uses: 1 },
    note: "Its taper falls from .08 at the tip to .035.",
  }),
];

const sequences: readonly CabinetOperation[] = [
  put("sequence", "demo-sequence-narrow", {
    name: "Narrow canal",
    steps: [
      { instrument: "demo-hand-10", seconds: 90 },
      { instrument: "demo-hand-15" },
      { instrument: "demo-17-04" },
      { instrument: "demo-20-04" },
      { instrument: "demo-25-04" },
    ],
    demo,
  }),
  put("sequence", "demo-sequence-wide", {
    name: "Wide canal",
    steps: [
      { instrument: "demo-25-06", shortByMm: 4 },
      { instrument: "demo-hand-20", seconds: 30 },
      { instrument: "demo-25-06" },
      { instrument: "demo-30-04", seconds: 12 },
    ],
    demo,
  }),
];

const files = demoFiles.map(({ id, body }) => put("file", id, { ...body, demo }));
const stock = Object.entries(demoStock).map(([id, body]) => put("stock", id, body));
const templates = Object.entries(demoTemplates).map(([id, body]) => put("template", id, body));

/** The demo's cabinet as one gesture: invented instruments, counted files, sequences, materials and two kinds of visit. */
export const demoCabinet = (): CabinetGesture => ({
  words: "The demo's cabinet added",
  operations: [...instruments, ...files, ...sequences, ...stock, ...templates],
});
