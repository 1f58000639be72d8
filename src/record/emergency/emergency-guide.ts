import { z } from "zod";
import stepFile from "../../../data/emergency-steps/steps.json" with { type: "json" };
import { Refusal } from "../../core/refusal.ts";
import { type EmergencyName, emergencyNames } from "../clinic-rules.ts";
import { guideSources } from "../mishap-guide/guide-sources.ts";
import { type Guided, guidedStep, mishapGuide } from "../mishap-guide/mishap-guide.ts";
import { mishapKinds } from "../parts/mishap-kinds.ts";
import { type EmergencySource, emergencySources } from "./emergency-sources.ts";

const line = z.string().min(10);
const row = z.strictObject({ says: line, caution: line.optional(), source: z.string() });
const ofMishap = z.strictObject({ step: z.string() }).describe("A step that the guide of a mishap holds.");
const guide = z.strictObject({
  title: z.string().min(5),
  mishap: z.enum(mishapKinds).optional().describe("The mishap whose cautions hold here too."),
  call: row,
  signs: z.array(row).min(1),
  steps: z.array(z.union([row, ofMishap])).min(1),
  not: z.array(row).min(1),
  differ: z.array(row),
});

/** One line of an emergency page, with its source and whether that was read or recalled. */
export interface EmergencyLine extends Guided {
  readonly caution?: string | undefined;
  /** The source's short name; absent where its id is its name. */
  readonly called?: string;
}

/** What an emergency page tells of one emergency. */
export interface EmergencyGuide {
  readonly name: EmergencyName;
  readonly title: string;
  /** Who is called, and when the emergency service comes first. */
  readonly call: EmergencyLine;
  readonly signs: readonly EmergencyLine[];
  /** In their order. */
  readonly steps: readonly EmergencyLine[];
  /** What is not done. */
  readonly not: readonly EmergencyLine[];
  /** Where sources say different things. */
  readonly differ: readonly EmergencyLine[];
  /** What else speaks for care. */
  readonly cautions: readonly EmergencyLine[];
}

const read = z
  .strictObject({ what: z.string(), emergencies: z.record(z.enum(emergencyNames), guide) })
  .parse(stepFile).emergencies;

/**
 * How an emergency is recognised, who is called and what is usually done first; it stands below the local protocol.
 * @source data/emergency-steps/steps.json and data/mishap-steps/steps.json, a source a line; lines without one are common practice
 */
export function emergencyGuide(name: EmergencyName): EmergencyGuide {
  const { title, mishap, call, signs, steps, not, differ } = read[name];
  return {
    ...{ name, title, call: withSource(call), signs: signs.map(withSource), not: not.map(withSource) },
    steps: steps.map((one) => withSource("step" in one ? stepOfMishap(one.step) : one)),
    differ: differ.map(withSource),
    cautions: mishap === undefined ? [] : mishapGuide(mishap).cautions.map(withSource),
  };
}

/** The sources that the lines of an emergency name, each once, in their order. */
export function sourcesOfEmergency({ call, signs, steps, not, differ, cautions }: EmergencyGuide) {
  const named = new Set([call, ...signs, ...steps, ...not, ...differ, ...cautions].map(({ source }) => source));
  return [...emergencySources, ...guideSources].filter(({ id }) => named.has(id));
}

function stepOfMishap(id: string): z.infer<typeof row> {
  const step = guidedStep(id);
  if (step === undefined) throw new Refusal("input.invalid", `no guide of a mishap has the step ${id}`);
  return step;
}

function withSource({ says, caution, source }: z.infer<typeof row>): EmergencyLine {
  const own: EmergencySource | undefined = emergencySources.find(({ id }) => id === source);
  const mark = (own ?? guideSources.find(({ id }) => id === source))?.verification ?? "memory";
  return {
    ...{ says, source, mark: source === "common practice" ? "common practice" : mark },
    ...(caution === undefined ? {} : { caution }),
    ...(own === undefined ? {} : { called: own.called }),
  };
}
