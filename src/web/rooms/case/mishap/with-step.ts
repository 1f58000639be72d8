import { guidedStep, type MishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import type { Mishap } from "./with-kind.ts";

/** A step that was done, and when: a moment in UTC. */
export type StepDone = NonNullable<Mishap["steps"]>[number];

/** The steps done, with one more at a moment, or without it where it stood there. */
export function withStep(done: readonly StepDone[], step: string, at: string): StepDone[] {
  const others = done.filter((one) => one.step !== step);
  return others.length < done.length ? others : [...others, { step, at }];
}

/** The first step of a guide that is not done. */
export const nextStep = ({ steps }: MishapGuide, done: readonly StepDone[]): MishapGuide["steps"][number] | undefined =>
  steps.find(({ id }) => !done.some(({ step }) => step === id));

/** Steps that were noted under another kind, as they are said; one that is no longer in the list by its id. */
export const stepsOfOthers = ({ steps }: MishapGuide, done: readonly StepDone[]): readonly string[] =>
  done.filter(({ step }) => !steps.some(({ id }) => id === step)).map(({ step }) => guidedStep(step)?.says ?? step);
