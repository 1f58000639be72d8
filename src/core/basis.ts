import { z } from "zod";

/** An interval of a stated level: `{ low, high, level }`; level 0.95 unless a caller asks otherwise. */
export const intervalSchema = z
  .strictObject({ low: z.number(), high: z.number(), level: z.number().gt(0).lt(1) })
  .describe("An interval: its two ends in the unit of the value, and its level (0.95).");
/** See {@link intervalSchema}. */
export type Interval = z.infer<typeof intervalSchema>;

/** How a number came about: the formula's name, what was assumed, and which published sources it rests on. */
export const basisSchema = z.strictObject({
  formula: z.string().describe("The formula or method by name."),
  assumptions: z.array(z.string()).describe("What was assumed, one sentence each."),
  sources: z.array(z.string()).describe("Ids of the published sources used; each is a folder of data/."),
});
/** See {@link basisSchema}. */
export type Basis = z.infer<typeof basisSchema>;

/** A value that could not be computed, by name, with the reason. */
export const notComputedSchema = z.array(z.strictObject({ name: z.string(), why: z.string() }));

/** What every output carries beside its own values; spread it into a topic's output schema. */
export const outputParts = {
  basis: basisSchema,
  cautions: z.array(z.string()).describe("Short texts; empty where there is none."),
  notComputed: notComputedSchema.describe("Values that are absent, with the reason."),
} as const;

/** A published source as a folder of data/ describes it. */
export interface Source {
  readonly id: string;
  /** Authors, title, journal, year, volume and pages in one line. */
  readonly reference: string;
  /** Whether the figure was read in a copy of the source ("seen") or recalled ("memory"). */
  readonly verification: "seen" | "memory";
}

const verification = z.enum(["seen", "memory"]);

/** A published source as its folder of data/ is read: what else stands in it is the topic's own. */
type SourceFile = Omit<Source, "verification"> & { readonly verification: string };

/** The sources of a topic, each with the mark that its own folder of data/ gives it; in the order in which they are given. */
export const sourcesOf = (files: readonly SourceFile[]): readonly Source[] =>
  files.map(({ id, reference, verification: mark }) => ({ id, reference, verification: verification.parse(mark) }));
