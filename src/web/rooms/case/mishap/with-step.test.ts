import { describe, expect, it } from "vitest";
import { mishapGuide } from "../../../../record/mishap-guide/mishap-guide.ts";
import { withSentences } from "./with-sentences.ts";
import { nextStep, stepsOfOthers, withStep } from "./with-step.ts";

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
