import { describe, expect, it } from "vitest";
import type { BodyOf } from "./parts.ts";
import { wayChosen } from "./way-chosen.ts";

const begun: BodyOf<"plan"> = { madeOn: "2026-02-10", options: [], chosen: "watch", because: "", risksNamed: [] };

describe("the way that a person chose", () => {
  it("is none in a plan that was only begun, whatever facts it asks for", () => {
    expect(wayChosen(begun)).toBe(undefined);
    expect(wayChosen({ ...begun, visitsExpected: 2, crowned: "no", difficultyEntry: "a".repeat(64) })).toBe(undefined);
  });

  it("is any way but watching as soon as it stands there", () => {
    expect(wayChosen({ ...begun, chosen: "treat" })).toBe("treat");
  });

  it.each<[string, Partial<BodyOf<"plan">>]>([
    ["weighed", { options: [{ way: "watch", forIt: "", againstIt: "" }] }],
    ["made on an entry", { planEntry: "a".repeat(64) }],
    ["reasoned", { because: "No complaint." }],
    ["said to the patient", { saidPlainly: "We can wait." }],
    ["named with a risk", { risksNamed: ["It may hurt."] }],
  ])("is watching where it was %s", (_how, more) => {
    expect(wayChosen({ ...begun, ...more })).toBe("watch");
  });
});
