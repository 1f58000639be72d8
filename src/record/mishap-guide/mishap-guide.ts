import { z } from "zod";
import stepFile from "../../../data/mishap-steps/steps.json" with { type: "json" };
import { stepDone } from "../parts/mishap-details.ts";
import { mishapKinds } from "../parts/mishap-kinds.ts";
import { guideSources } from "./guide-sources.ts";

const said = { says: z.string().min(10), source: z.string(), mark: z.enum(["seen", "memory"]).optional() };
const row = z.strictObject(said);
const step = z.strictObject({ id: stepDone.shape.step, caution: z.string().min(10).optional(), ...said });
const guide = z.strictObject({
  steps: z.array(step).min(1),
  cautions: z.array(row),
  tell: z.array(z.string().min(10)).min(1),
});

/** A fact about a kind of mishap, with its source and whether it was read or recalled. */
export interface Guided {
  readonly says: string;
  readonly source: string;
  readonly mark: "seen" | "memory" | "common practice";
}
/** One of the usual immediate steps after a mishap. */
export interface GuidedStep extends Guided {
  readonly id: string;
  /** What speaks for care in this step. */
  readonly caution?: string | undefined;
}
/** What is usually done and said after a kind of mishap. */
export interface MishapGuide {
  readonly steps: readonly GuidedStep[];
  readonly cautions: readonly Guided[];
  /** What the patient is told, in plain sentences. */
  readonly tell: readonly string[];
}

/** A kind of mishap. */
type Kind = (typeof mishapKinds)[number];

const read = z.strictObject({ what: z.string(), kinds: z.record(z.enum(mishapKinds), guide) }).parse(stepFile);

/**
 * What is usually done and said after a mishap of a kind; it stands below the local protocol and licensed judgement.
 * @source data/mishap-steps/steps.json, a source a row; rows without one are common practice
 */
export const mishapGuide = (kind: Kind): MishapGuide => {
  const { steps, cautions, tell } = read.kinds[kind];
  return { steps: steps.map(withMark), cautions: cautions.map(withMark), tell };
};

/** A row with the mark of its source; its own mark where it has one. */
function withMark<Row extends z.infer<typeof row>>(one: Row): Row & { readonly mark: Guided["mark"] } {
  const published = guideSources.find(({ id }) => id === one.source)?.verification ?? "memory";
  return { ...one, mark: one.source === "common practice" ? "common practice" : (one.mark ?? published) };
}

/** The steps of every kind by their id, as the record names them. */
export const guidedStep = (id: string): GuidedStep | undefined =>
  mishapKinds.flatMap((kind) => mishapGuide(kind).steps).find((one) => one.id === id);
