import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../test/sample-case.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { askedOverTime } from "./asked-over-time.ts";
import type { BindingContext } from "./binding.ts";

const contextOf = (parts: readonly Part[]): BindingContext => ({
  ...{ parts, settings: firstSettings },
  earlier: () => undefined,
});
const plan = (id: string, madeOn: string): Part =>
  part("plan", id, { madeOn, options: [], chosen: "treat", because: "", risksNamed: [] });
const mishap = (id: string, on: string): Part =>
  part("mishap", id, {
    ...{ on, what: "ledge", third: "apical", bend: "in", handled: "left", toldPatient: "told", story: "" },
  } as BodyOf<"mishap">);

/** Asks for the parts that stand, by their ids. */
const asked = (...parts: readonly Part[]) =>
  askedOverTime("standing", contextOf([...sampleParts(), ...parts]), (subject, about, context) => ({
    ...{ subject, inputPaths: [] },
    input: { about: about.id, parts: context.parts.flatMap(({ id }) => (/plan|mishap/.test(id) ? [id] : [])) },
  }));
const partsIn = (one: ReturnType<typeof asked>[number] | undefined) => (one && "input" in one ? one.input : undefined);

describe("what is asked over time", () => {
  it("is nothing without a case, and of a case without a plan the case alone", () => {
    expect(askedOverTime("standing", contextOf([]), () => expect.fail("nothing is there to ask of"))).toEqual([]);
    expect(asked(mishap("mishap-1", "2024-03-20")).map(({ subject }) => subject)).toEqual(["standing of about"]);
  });

  it("is each plan with what stood on its day, and the case as it stands now", () => {
    const told = asked(
      plan("plan-1", "2024-03-04"),
      mishap("mishap-1", "2024-03-20"),
      mishap("mishap-2", "2024-03-04"),
    );
    expect(told.map(({ subject }) => subject)).toEqual(["standing of plan-1", "standing of about"]);
    expect(told.map(partsIn)).toEqual([
      { about: "about", parts: ["plan-1", "mishap-2"] },
      { about: "about", parts: ["plan-1", "mishap-1", "mishap-2"] },
    ]);
  });

  it("weighs each plan without the others, whichever came first", () => {
    const told = asked(plan("plan-2", "2024-06-01"), plan("plan-1", "2024-03-04"), mishap("mishap-1", "2024-03-20"));
    expect(told.map(partsIn).slice(0, 2)).toEqual([
      { about: "about", parts: ["plan-2", "mishap-1"] },
      { about: "about", parts: ["plan-1"] },
    ]);
  });

  it("leaves the case out as long as nothing came after the last plan, be it an answer or a gap", () => {
    const [first, mended] = [mishap("mishap-1", "2024-03-04"), plan("plan-1", "2024-03-04")];
    expect(asked(first, mended).map(({ subject }) => subject)).toEqual(["standing of plan-1"]);
    const gaps = (...whys: readonly [string, string]) => {
      const left = [...whys];
      return askedOverTime("standing", contextOf([...sampleParts(), mended]), (subject) => ({
        ...{ subject, why: left.shift() ?? "", inputPaths: [] },
      })).length;
    };
    expect([gaps("nothing is there", "nothing is there"), gaps("nothing is there", "no sheet")]).toEqual([1, 2]);
  });
});
