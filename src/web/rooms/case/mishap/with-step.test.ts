import { describe, expect, it } from "vitest";
import { mishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import { withSentences } from "./with-sentences.ts";
import { atTimeOfDay, nextStep, stepsOfOthers, withStep, withTime } from "./with-step.ts";

const at = "2026-01-02T13:02:00.000Z";
const guide = mishapGuide("ledge");
const [first, second] = guide.steps;

describe("the usual steps", () => {
  it("are noted with their time, and taken back by the same press", () => {
    const once = withStep([], "ledge-stop", at);
    expect(once).toEqual([{ step: "ledge-stop", at }]);
    const twice = withStep(once, "ledge-film", at);
    expect(twice.map(({ step }) => step)).toEqual(["ledge-stop", "ledge-film"]);
    expect(withStep(twice, "ledge-stop", "2026-01-03T00:00:00.000Z")).toEqual([{ step: "ledge-film", at }]);
  });

  it("go on with the first that is not noted, also where a later one is", () => {
    expect(nextStep(guide, [])).toBe(first);
    expect(nextStep(guide, [{ step: second?.id ?? "", at }])).toBe(first);
    expect(nextStep(guide, [{ step: first?.id ?? "", at }])).toBe(second);
    const all = guide.steps.map(({ id }) => ({ step: id, at }));
    expect(nextStep(guide, all)).toBeUndefined();
  });

  it("are corrected to another time of their own day, and keep their order", () => {
    const done = [
      { step: "ledge-stop", at },
      { step: "ledge-film", at },
    ];
    const earlier = atTimeOfDay(at, "9:05") ?? "";
    expect([new Date(earlier).getHours(), new Date(earlier).getMinutes()]).toEqual([9, 5]);
    expect(new Date(earlier).toDateString()).toBe(new Date(at).toDateString());
    expect(withTime(done, "ledge-stop", earlier)).toEqual([{ step: "ledge-stop", at: earlier }, done[1]]);
    expect(withTime(done, "gone-since", earlier)).toEqual(done);
    for (const same of ["0905", " 09:05 ", "9.05"]) expect(atTimeOfDay(at, same)).toBe(earlier);
    for (const none of ["", "24:00", "9:60", "9", "soon"]) expect(atTimeOfDay(at, none)).toBeUndefined();
  });

  it("of another kind are told as they are said, one that is no longer in the list by its id", () => {
    const done = [
      { step: "block-stop", at },
      { step: "ledge-stop", at },
      { step: "gone-since", at },
    ];
    expect(stepsOfOthers(guide, done)).toEqual([mishapGuide("block").steps[0]?.says, "gone-since"]);
  });
});

describe("sentences put in", () => {
  it("stand behind what was written, each once", () => {
    expect(withSentences("", ["A.", "B."])).toBe("A. B.");
    expect(withSentences("Said: A. ", ["A.", "B."])).toBe("Said: A.\nB.");
    expect(withSentences("A. B.", ["A.", "B."])).toBe("A. B.");
  });
});
