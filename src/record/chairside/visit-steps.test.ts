import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BodyOf, partTypes } from "../parts.ts";
import { emptyVisit } from "./visit-for-tests.ts";
import {
  isAnswered,
  openStepAbout,
  openSteps,
  stepStanding,
  withStepDone,
  withStepLeftOut,
  withStepOpen,
  withTemplate,
} from "./visit-steps.ts";

const template = {
  id: "template-first",
  body: {
    name: "First visit",
    aim: "Shape and medicate",
    steps: [
      { says: "History confirmed", about: "history" },
      { says: "Access", about: "access", holdPoint: "access" },
      { says: "Told" },
    ],
  },
} as const;
const taken = withTemplate(emptyVisit, template);
const standings = ({ steps = [] }: BodyOf<"visit">) => steps.map(stepStanding);

describe("the steps of a visit", () => {
  it("are a template's, all open: nothing is noted as done", () => {
    expect(standings(taken)).toEqual(["open", "open", "open"]);
    expect(taken).toMatchObject({ aim: "Shape and medicate", template: { id: "template-first", name: "First visit" } });
    expect(taken).toMatchObject({ historyConfirmed: false, timeOut: "notDone", holdPoints: [] });
    expect(partTypes.visit.body.safeParse(taken).error).toBeUndefined();
  });

  it("leave an aim that was written as it is, and take none where the template has none", () => {
    expect(withTemplate({ ...emptyVisit, aim: "Mine" }, template).aim).toBe("Mine");
    expect(withTemplate(emptyVisit, { ...template, body: { name: "n", steps: [] } }).aim).toBe("");
  });

  it("are done at a minute, or at none that was noted", () => {
    expect(withStepDone(taken, 1, 12).steps?.[1]).toMatchObject({ doneAtMin: 12, holdPoint: "access" });
    const untimed = withStepDone(taken, 1, undefined);
    expect(untimed.steps?.[1]).toMatchObject({ done: true });
    expect(standings(untimed)).toEqual(["open", "done", "open"]);
    // Minute 0 is a minute.
    expect(standings(withStepDone(taken, 1, 0))[1]).toBe("done");
    expect(partTypes.visit.body.safeParse(untimed).error).toBeUndefined();
  });

  it("are left out for a reason, and open again by a second press", () => {
    const out = withStepLeftOut(withStepDone(taken, 2, 5), 2, "the patient left");
    expect(out.steps?.[2]).toEqual({ says: "Told", leftOut: "the patient left" });
    expect(withStepOpen(out, 2)).toEqual(taken);
    expect(openSteps(out.steps ?? [])).toEqual([0, 1]);
  });

  it("confirm the history with the step that says so, and take that back with it", () => {
    const confirmed = withStepDone(taken, 0, 1);
    expect(confirmed.historyConfirmed).toBe(true);
    expect(withStepOpen(confirmed, 0).historyConfirmed).toBe(false);
    // A history that was confirmed by hand stays so when the open step is left out.
    expect(withStepLeftOut({ ...taken, historyConfirmed: true }, 0, "asked by phone").historyConfirmed).toBe(true);
  });

  it("are answered by what was noted: a time-out by the right tooth alone, a count by what came back", () => {
    const timeOut = { says: "Named", about: "timeOut" } as const;
    const noted = { ...taken, note: "x" };
    expect(isAnswered(timeOut, taken, taken)).toBe(false);
    expect(isAnswered(timeOut, taken, noted)).toBe(false);
    expect(isAnswered(timeOut, taken, { ...taken, timeOut: "toothAndSideChecked" })).toBe(true);
    const count = { says: "Counted in", about: "countIn" } as const;
    const set = { set: "", steriliserCycle: "", countedOut: 14 };
    expect(isAnswered(count, taken, { ...taken, instrumentSet: set })).toBe(false);
    expect(isAnswered(count, taken, { ...taken, instrumentSet: { ...set, countedIn: 14 } })).toBe(true);
    expect(isAnswered({ says: "Rinsed", about: "irrigation" }, taken, noted)).toBe(true);
  });

  it("are found by what they are about while they are open", () => {
    expect(openStepAbout(taken, "access")).toBe(1);
    expect(openStepAbout(withStepDone(taken, 1, 3), "access")).toBeUndefined();
    expect(openStepAbout(emptyVisit, "access")).toBeUndefined();
  });

  it("that are not there change nothing", () => {
    expect(withStepDone(taken, 9, 1)).toBe(taken);
    expect(withStepDone(emptyVisit, 0, 1)).toBe(emptyVisit);
  });

  it("change one at a time, whichever it is", () => {
    fc.assert(
      fc.property(fc.nat(2), fc.nat(600), (index, minute) => {
        const next = withStepDone(taken, index, minute);
        expect(openSteps(next.steps ?? [])).toEqual([0, 1, 2].filter((one) => one !== index));
        expect(withStepOpen(next, index)).toEqual(taken);
      }),
    );
  });
});
