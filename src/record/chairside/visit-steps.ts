import type { z } from "zod";
import type { visitStep } from "../parts/visit-step.ts";
import type { BodyOf } from "../parts.ts";

type Visit = BodyOf<"visit">;
/** A step of a visit. */
export type VisitStep = z.infer<typeof visitStep>;

/** How a step stands. */
export type StepStanding = "done" | "leftOut" | "open";

/** How a step stands: left out for a reason, done (at a minute or at none that was noted), or open. */
export function stepStanding({ doneAtMin, done, leftOut }: VisitStep): StepStanding {
  if (leftOut !== undefined) return "leftOut";
  return doneAtMin !== undefined || done === true ? "done" : "open";
}

/** What a template asks for, as the record's cabinet keeps it. */
interface Template {
  readonly id: string;
  readonly body: {
    readonly name: string;
    readonly aim?: string | undefined;
    readonly steps: readonly Pick<VisitStep, "says" | "about" | "holdPoint">[];
  };
}

/** The visit with a template's steps, all open, and its aim where none is written; nothing is recorded as done. */
export function withTemplate(visit: Visit, { id, body }: Template): Visit {
  const aim = visit.aim === "" ? (body.aim ?? "") : visit.aim;
  return { ...visit, aim, template: { id, name: body.name }, steps: body.steps.map((step) => ({ ...step })) };
}

/** The visit with one step done at a minute, or at none; a history that is confirmed is noted as such with it. */
export function withStepDone(visit: Visit, index: number, atMin: number | undefined): Visit {
  const mark = atMin === undefined ? { done: true as const } : { doneAtMin: atMin };
  return withStep(visit, index, (asked) => ({ ...asked, ...mark }), true);
}

/** The visit with one step open again. */
export const withStepOpen = (visit: Visit, index: number): Visit => withStep(visit, index, (asked) => asked, false);

/** The visit with one step left out, and why. */
export const withStepLeftOut = (visit: Visit, index: number, because: string): Visit =>
  withStep(visit, index, (asked) => ({ ...asked, leftOut: because }), false);

function withStep(visit: Visit, index: number, next: (asked: VisitStep) => VisitStep, isDone: boolean): Visit {
  const step = visit.steps?.[index];
  if (step === undefined) return visit;
  const { doneAtMin: _at, done: _done, leftOut: _why, ...asked } = step;
  const steps = visit.steps?.map((one, place) => (place === index ? next(asked) : one));
  const changed = isDone || stepStanding(step) === "done";
  return { ...visit, steps, ...(step.about === "history" && changed ? { historyConfirmed: isDone } : {}) };
}

/**
 * Whether what a step asks for is in the record now.
 * Takes the step and the visit before and after something was noted. A time-out is answered by the case's own tooth alone, a
 * count by instruments that were counted in; for the rest it is enough that something was noted.
 */
export function isAnswered({ about }: VisitStep, before: Visit, after: Visit): boolean {
  if (JSON.stringify(before) === JSON.stringify(after)) return false;
  if (about === "timeOut") return after.timeOut === "toothAndSideChecked";
  return about !== "countIn" || after.instrumentSet?.countedIn !== undefined;
}

/** The place of the first open step about something; undefined where there is none. */
export function openStepAbout({ steps = [] }: Visit, about: VisitStep["about"]): number | undefined {
  const place = steps.findIndex((step) => step.about === about && stepStanding(step) === "open");
  return place === -1 ? undefined : place;
}

/** The places of the steps that are open, in their order. */
export const openSteps = (steps: readonly VisitStep[]): readonly number[] =>
  steps.flatMap((step, index) => (stepStanding(step) === "open" ? [index] : []));
