import { guidedStep, type MishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import type { Mishap } from "./with-kind.ts";

/** A step that was done, and when: a moment in UTC. */
export type StepDone = NonNullable<Mishap["steps"]>[number];

/** The steps done, with one more at a moment, or without it where it stood there. */
export function withStep(done: readonly StepDone[], step: string, at: string): StepDone[] {
  const others = done.filter((one) => one.step !== step);
  return others.length < done.length ? others : [...others, { step, at }];
}

/** The steps done, one of them at another moment. */
export const withTime = (done: readonly StepDone[], step: string, at: string): StepDone[] =>
  done.map((one) => (one.step === step ? { ...one, at } : one));

/** A moment moved to a time of its own day in this place, written as `14:02`; undefined for what is no time. */
export function atTimeOfDay(moment: string, time: string): string | undefined {
  const [, hours, minutes] = /^([01]?\d|2[0-3])[:.]?([0-5]\d)$/.exec(time.trim()) ?? [];
  if (hours === undefined || minutes === undefined) return undefined;
  const at = new Date(moment);
  at.setHours(Number(hours), Number(minutes), 0, 0);
  return at.toISOString();
}

/** The first step of a guide that is not done. */
export const nextStep = ({ steps }: MishapGuide, done: readonly StepDone[]): MishapGuide["steps"][number] | undefined =>
  steps.find(({ id }) => !done.some(({ step }) => step === id));

/** Steps that were noted under another kind, as they are said; one that is no longer in the list by its id. */
export const stepsOfOthers = ({ steps }: MishapGuide, done: readonly StepDone[]): readonly string[] =>
  done.filter(({ step }) => !steps.some(({ id }) => id === step)).map(({ step }) => guidedStep(step)?.says ?? step);
