import { z } from "zod";

const interval = z.object({ low: z.number(), high: z.number() });
const group = { n: z.number(), sigmaPx: z.number(), interval };

const clickAnswer = z.object({
  ...{ n: z.number(), clicks: z.number(), sigmaPx: z.number(), sigmaColumnPx: z.number(), sigmaRowPx: z.number() },
  ...{ driftColumnPx: z.number(), driftRowPx: z.number(), truths: z.number() },
  ...{ biasColumnPx: z.number().optional(), biasRowPx: z.number().optional(), missPx: z.number().optional() },
  intervals: z.record(z.string(), interval),
  byName: z.array(z.object({ name: z.string(), ...group, missPx: z.number().optional() })),
  byTool: z.array(z.object({ tool: z.string(), ...group })),
  outliers: z.array(z.object({ film: z.string(), name: z.string(), apartPx: z.number(), expectedPx: z.number() })),
  without: z.object(group).optional(),
  zoom: z.object({ low: z.number(), middle: z.number(), high: z.number() }).optional(),
  basis: z.object({ formula: z.string(), assumptions: z.array(z.string()) }),
  cautions: z.array(z.string()),
  notComputed: z.array(z.object({ name: z.string(), why: z.string() })),
});

/** What a finished exercise answered, as this room reads it. */
export type ClickAnswer = z.infer<typeof clickAnswer>;

/** The error of an exercise that is offered for use: without the pairs that are out of line where there are some. */
export function offeredOf({ n, sigmaPx, intervals, without }: ClickAnswer) {
  if (without !== undefined) return { which: "without" as const, ...without };
  return { which: "all" as const, n, sigmaPx, interval: intervals.sigmaPx ?? { low: sigmaPx, high: sigmaPx } };
}

/** The answer of an exercise; undefined where another version of the program wrote it in a form that is not read here. */
export const readClickAnswer = (answer: unknown): ClickAnswer | undefined => clickAnswer.safeParse(answer).data;
