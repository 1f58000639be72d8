import { Refusal } from "../core/refusal.ts";
import { apply, type Operation, patchesOf } from "../record/change.ts";
import type { Part } from "../record/parts.ts";
import type { Settings } from "../record/settings.ts";
import type { Binding, Gap, Question } from "./binding.ts";
import { anaestheticBinding } from "./bindings/anaesthetic.ts";
import { irrigationBinding } from "./bindings/irrigation.ts";
import { solventBinding } from "./bindings/solvent.ts";
import { ultrasonicHeatBinding } from "./bindings/ultrasonic-heat.ts";
import type { DoSums, Outcome } from "./derive-ledger.ts";
import type { WhatIfAnswer, WhatIfAsk, WhatIfTopic } from "./what-if.ts";

const bindingOf: Readonly<Record<WhatIfTopic, Binding>> = {
  anaesthetic: anaestheticBinding,
  solvent: solventBinding,
  irrigation: irrigationBinding,
  ultrasonicHeat: ultrasonicHeatBinding,
};

/** A case as questions "what if" are laid over it. */
interface WhatIfGround {
  readonly parts: readonly Part[];
  readonly settings: Settings;
}

/**
 * What sums would say with operations laid over a case, in the order of the questions; by the same bindings and topics as the ledger's,
 * and nothing is stored. No revision is judged: nothing can be overwritten.
 * @throws Refusal of the record for operations that it would not take, with the same paths; `facts.ask` says in which question.
 */
export async function whatIfAnswers(
  doSums: DoSums,
  ground: WhatIfGround,
  asks: readonly WhatIfAsk[],
): Promise<WhatIfAnswer[]> {
  const asked = asks.map((ask, index) => ({ ask, found: questionOf(ask, index, ground) }));
  return Promise.all(asked.map(async ({ ask, found }) => answerTo(ask, found, doSums)));
}

function questionOf(ask: WhatIfAsk, index: number, { parts, settings }: WhatIfGround): Question | Gap | undefined {
  const laid = inAsk(index, () => laidOver(ask.operations, parts));
  const context = { parts: laid, settings, earlier: () => undefined };
  return bindingOf[ask.topic].ask(context).find(({ subject }) => subject === ask.subject);
}

function laidOver(operations: readonly Operation[], parts: readonly Part[]): readonly Part[] {
  if (operations.length === 0) return parts;
  const onNow = operations.map((one) => ({
    ...one,
    baseRevision: parts.find(({ id }) => id === one.id)?.revision ?? 0,
  }));
  return apply(parts, patchesOf({ words: "What if", operations: onNow }, parts));
}

/** Says of a refusal in which question it came up. */
function inAsk<Result>(index: number, work: () => Result): Result {
  try {
    return work();
  } catch (thrown) {
    if (!(thrown instanceof Refusal)) throw thrown;
    throw new Refusal(thrown.code, thrown.message, { ...thrown.facts, ask: index }, thrown.faults);
  }
}

async function answerTo(
  { topic, subject }: WhatIfAsk,
  found: Question | Gap | undefined,
  doSums: DoSums,
): Promise<WhatIfAnswer> {
  const about = { topic, subject };
  if (found === undefined) return { ...about, gap: `nothing of it is recorded: no sum is called ${subject}` };
  if ("why" in found) return { ...about, gap: found.why };
  const [outcome] = await doSums({ topic: bindingOf[topic].topic, inputs: [found.input] });
  return { ...about, ...told(outcome) };
}

function told(outcome: Outcome | undefined): Pick<WhatIfAnswer, "output" | "refusal"> {
  if (outcome === undefined) throw new Error("a sum got no answer");
  return "output" in outcome ? { output: outcome.output } : { refusal: outcome.refused };
}
