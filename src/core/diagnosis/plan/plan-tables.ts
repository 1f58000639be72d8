import { z } from "zod";
import conflictFile from "../../../../data/plan/conflicts.json" with { type: "json" };
import factFile from "../../../../data/plan/facts.json" with { type: "json" };
import fitFile from "../../../../data/plan/fits.json" with { type: "json" };
import mustFile from "../../../../data/plan/musts.json" with { type: "json" };
import plainFile from "../../../../data/plan/plain.json" with { type: "json" };
import riskFile from "../../../../data/plan/risks.json" with { type: "json" };
import wayFile from "../../../../data/plan/ways.json" with { type: "json" };
import { conditionSchema } from "./condition.ts";
import { planWays } from "./plan-ways.ts";

const ways = z.array(z.enum(planWays)).min(1);
const lines = z.array(z.string());

const fit = z.strictObject({
  id: z.string(),
  way: z.enum(planWays),
  speaks: z.enum(["for", "against", "asks"]),
  when: conditionSchema,
  says: z.string(),
  source: z.string(),
});
const must = z.strictObject({
  id: z.string(),
  ways,
  fact: z.string(),
  oneOf: lines.optional(),
  atLeast: z.number().optional(),
  atMost: z.number().optional(),
  unit: z.string().optional(),
  says: z.string(),
  waits: z.enum(["always", "whenNotMet", "never"]),
  note: z.string().optional(),
  source: z.string(),
});
const conflict = z.strictObject({ ways, onlyWhen: conditionSchema.optional(), says: z.string(), sources: lines });
const risk = z.strictObject({
  id: z.string(),
  ways,
  calls: z.array(z.strictObject({ when: conditionSchema, because: z.string() })).min(1),
  says: z.string(),
  plain: z.string(),
  outOf: z.strictObject({ events: z.int(), n: z.int(), says: z.string() }).optional(),
  source: z.string(),
});
const way = z.strictObject({
  way: z.enum(planWays),
  steps: lines,
  visits: z.strictObject({
    ...{ least: z.int(), most: z.int(), usual: z.string(), why: z.string(), source: z.string() },
  }),
  plain: z.strictObject({
    ...{ name: z.string(), whatItIs: lines, whatItAsks: lines, whatItLeaves: lines, visits: z.string() },
  }),
});

/** Which way fits which tooth, a row a reason. @source docs/methods/plan.md C3 */
export const fitRows = z.array(fit).parse(fitFile.rows);
/** What must be true before a way is taken. @source docs/methods/plan.md C4 */
export const mustRows = z.array(must).parse(mustFile.rows);
/** One of {@link mustRows}. */
export type MustRow = z.infer<typeof must>;
/** Published figures that speak against each other. @source docs/methods/plan.md C7 */
export const conflictRows = z.array(conflict).parse(conflictFile.rows);
/** Material risks and the facts that call for them. @source docs/methods/plan.md C9 */
export const riskRows = z.array(risk).parse(riskFile.rows);
/** One of {@link riskRows}. */
export type RiskRow = z.infer<typeof risk>;
/** Steps, visits and plain words of each way. @source docs/methods/plan.md C10 and C11 */
export const wayRows = z.array(way).parse(wayFile.rows);
/** What each fact is called and how it is asked. */
export const factTexts = z
  .record(z.string(), z.strictObject({ name: z.string(), ask: z.string() }))
  .parse(factFile.facts);
/** What is wrong with a tooth, in plain words. @source docs/methods/plan.md C11 */
export const plainTexts = z
  .strictObject({
    what: z.string(),
    pulpal: z.record(z.string(), z.string()),
    apical: z.record(z.string(), z.string()),
    ifNothing: z.strictObject({ sound: lines, inflamed: lines, infected: lines, silentFilled: lines, unknown: lines }),
  })
  .parse(plainFile);
