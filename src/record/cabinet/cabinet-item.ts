import { z } from "zod";
import { instrumentGeometry, reciprocation } from "../instrument-geometry.ts";
import { anaestheticSolution, irrigant, medicament, ownSolvent, solventDose } from "../parts/visit-materials.ts";
import { templateStep } from "../parts/visit-step.ts";
import { between, day, line, mmBetween, words } from "../values.ts";

/** The id of an item of the cabinet. */
export const cabinetId = z.string().regex(/^[a-z0-9-]{3,64}$/, "is not the id of an item of the cabinet");

const demo = z.literal(true).optional().describe("Invented; it goes with the demo.");

/** What the clinic allows one file before it is discarded; the person's own numbers, none by default. */
const discardLimits = z.strictObject({
  uses: z.int().min(0).max(1_000).optional().describe("Visits in which it was used."),
  canals: z.int().min(0).max(1_000).optional(),
  sterilisations: z.int().min(0).max(1_000).optional(),
  turns: between(0, 1e7, "turns that are left of both directions").optional(),
  equivalentTurns: between(0, 1e7, "equivalent reference turns, their upper end").optional(),
});

/** An instrument of the clinic, by geometry. */
export const cabinetInstrument = z.strictObject({
  name: line.min(1).describe("As the clinic calls it; no maker's name."),
  ...instrumentGeometry,
  rpm: between(0, 20_000, "turns a minute").optional(),
  reciprocation: reciprocation.optional(),
  torqueLimitNmm: between(0.1, 200, "N mm").optional(),
  seconds: between(0, 3_600, "s").optional().describe("The usual time in one canal."),
  limits: discardLimits.optional(),
  note: words.optional(),
  demo,
});

/** One physical file that is counted. */
const cabinetFile = z.strictObject({
  instrument: cabinetId,
  label: line.min(1).describe("As the clinic marks it."),
  since: day,
  sterilisedOn: z.array(day).max(1_000),
  discarded: z.strictObject({ on: day, because: line }).optional(),
  demo,
});

/** Instruments in the order in which a canal usually meets them. */
const cabinetSequence = z.strictObject({
  name: line.min(1),
  steps: z
    .array(
      z.strictObject({
        instrument: cabinetId,
        shortByMm: mmBetween(0, 30).optional().describe("How far short of the working length; to it where absent."),
        seconds: between(0, 3_600, "s").optional(),
      }),
    )
    .min(1)
    .max(20),
  demo,
});

/** What a visit is given of something that the clinic keeps; each amount that stands here was entered by a person. */
const stockHolds = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("anaesthetic"), ...anaestheticSolution.shape }),
  z.strictObject({
    kind: z.literal("irrigant"),
    ...irrigant.pick({ solution: true, named: true, percent: true, activated: true, needle: true }).partial().shape,
    solution: irrigant.shape.solution,
    volumeMl: irrigant.shape.volumeMl.optional().describe("The usual volume."),
    minutes: irrigant.shape.minutes.optional(),
  }),
  z.strictObject({
    kind: z.literal("solvent"),
    solvent: solventDose.shape.solvent,
    own: ownSolvent.optional(),
    volumeMl: solventDose.shape.volumeMl.optional().describe("The usual dose."),
  }),
  z.strictObject({ kind: z.literal("medicament"), medicament: medicament.shape.kind, detail: line.optional() }),
  z.strictObject({ kind: z.literal("temporary"), material: line.min(1) }),
  z
    .strictObject({
      kind: z.literal("filling"),
      material: line.min(1),
      as: z.enum(["core", "sealer", "barrier", "buildUp"]),
    })
    .describe("What stays in the tooth."),
]);

/** Something that the clinic keeps and a visit uses up, by kind of material. */
const cabinetStock = z.strictObject({
  name: line.min(1).describe("As the clinic calls it; no maker's name."),
  holds: stockHolds,
  lot: line.optional().describe("Of the package in use."),
  expires: day.optional(),
  demo,
});

/** What the clinic wants of a kind of visit: its steps in order, and what it usually uses. */
const cabinetTemplate = z.strictObject({
  name: line.min(1),
  aim: line.optional(),
  steps: z.array(templateStep).max(60),
  stock: z.array(cabinetId).max(20).describe("What is offered first, in this order."),
  demo,
});

/** What a cabinet holds, by kind. */
export const cabinetKinds = {
  instrument: cabinetInstrument,
  file: cabinetFile,
  sequence: cabinetSequence,
  stock: cabinetStock,
  template: cabinetTemplate,
} as const;
/** A kind of item. */
export type CabinetKind = keyof typeof cabinetKinds;
/** An item of one kind as it stands, with the number of its changes. */
export type CabinetItemOf<Kind extends CabinetKind> = {
  readonly [K in Kind]: {
    readonly id: string;
    readonly kind: K;
    readonly revision: number;
    readonly body: z.infer<(typeof cabinetKinds)[K]>;
  };
}[Kind];
/** An item of any kind. */
export type CabinetItem = CabinetItemOf<CabinetKind>;
