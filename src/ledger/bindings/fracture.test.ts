import { describe, expect, it } from "vitest";
import { answer } from "../../core/topic.ts";
import type { Part } from "../../record/parts.ts";
import {
  contextOf,
  filmPart,
  mishapPart,
  outputsOf,
  rowOf,
  tracePart,
  visitPart,
} from "../instruments-used/worked-case-for-tests.ts";
import { fractureBinding } from "./fracture.ts";

const traced = [filmPart("film-d", { purpose: "diagnostic", takenOn: "2024-03-01" }), tracePart("t", "film-d")];
const ask = (parts: readonly Part[]) => {
  const [one] = fractureBinding.ask(contextOf(parts, outputsOf(parts)));
  return {
    subject: one?.subject,
    input: one !== undefined && "input" in one ? one.input : undefined,
    paths: one?.inputPaths ?? [],
  };
};

describe("how an instrument broke is asked", () => {
  it("by its uses up to the break, its canal then, its piece and what was seen", () => {
    const rows = [rowOf({ seconds: 5, torqueLimitNmm: 15 }), rowOf({ torqueLimitNmm: 20 })];
    const seen: Parameters<typeof mishapPart>[2] = {
      ...{ signs: ["noneVisible"], tipBound: "no", stoppedAtTorqueLimit: "yes" },
      ...{ lengthMm: { value: 3, sigma: 0.2 }, tipDiameterMm: { value: 0.26, sigma: 0.02 } },
    };
    const { subject, input, paths } = ask([...traced, visitPart("visit-1", rows), mishapPart("mishap-1", {}, seen)]);
    expect(subject).toBe("fracture of mishap-1");
    expect(input).toMatchObject({
      instrument: { size: 25, taper: 0.06, rpm: 300, torqueLimitNmm: 20 },
      uses: [{ seconds: 5 }, { seconds: 20 }],
      ...{ tipDepthMm: 10.5, signs: ["noneVisible"], tipBound: false, stoppedAtTorqueLimit: true },
    });
    // The width of its tip is no measure of where it broke.
    expect(input).toHaveProperty("fragment", { lengthMm: { value: 3, sigma: 0.2 } });
    expect(paths).toEqual(
      expect.arrayContaining([
        { input: "instrument.torqueLimitNmm", record: "visit-1/instruments/1/torqueLimitNmm" },
        { input: "uses[1].seconds", record: "visit-1/instruments/1/seconds" },
        { input: "tipDepthMm", record: "mishap-1/separated/tipDepthMm" },
        { input: "tipBound", record: "mishap-1/separated/tipBound" },
      ]),
    );
  });

  it("takes the speed that the mishap says before that of a row", () => {
    const instrument = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", rpm: 500 } as const;
    const { input, paths } = ask([visitPart("visit-1", [rowOf()]), mishapPart("mishap-1", { instrument })]);
    expect(input).toMatchObject({ instrument: { rpm: 500 } });
    expect(paths).toContainEqual({ input: "instrument.rpm", record: "mishap-1/instrument/rpm" });
  });

  it("leaves out uses that lack something, and says nothing that nobody knows", () => {
    const { input } = ask([...traced, visitPart("visit-1", [rowOf({ seconds: undefined })]), mishapPart("mishap-1")]);
    expect(input).toMatchObject({ tipDepthMm: 10.5, signs: [], fragment: {} });
    for (const field of ["uses", "tipBound", "stoppedAtTorqueLimit"]) expect(input).not.toHaveProperty(field);
  });

  it("is asked with the instrument alone as well, and answered", () => {
    const { input } = ask([mishapPart("mishap-1", { separated: undefined })]);
    expect(input).toEqual({
      instrument: { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" },
      ...{ fragment: {}, signs: [] },
    });
    expect(answer(fractureBinding.topic, input)).toHaveProperty("explanations");
    expect(ask([mishapPart("mishap-1", { instrument: undefined })]).subject).toBeUndefined();
  });

  it("is asked nothing while the instrument has no size or no taper, and says so", () => {
    const why = (instrument: object) => fractureBinding.ask(contextOf([mishapPart("mishap-1", { instrument })], {}))[0];
    expect(why({})).toEqual({
      subject: "fracture of mishap-1",
      why: "the size and the taper of the instrument that broke are not told; say in the mishap which instrument it was",
      inputPaths: [{ input: "instrument", record: "mishap-1/instrument" }],
    });
    const sized = why({ size: 25, taper: 0.06 });
    expect(sized).toHaveProperty("input.instrument", { size: 25, taper: 0.06 });
    expect(answer(fractureBinding.topic, sized && "input" in sized ? sized.input : {})).toHaveProperty("explanations");
  });

  it("says where its course begins where that is not the orifice", () => {
    const length = filmPart("film-l", { purpose: "workingLength", takenOn: "2024-03-05" });
    const { input, paths } = ask([length, tracePart("t", "film-l"), mishapPart("mishap-1")]);
    expect(input).toMatchObject({ courseStarts: "referencePoint", tipDepthMm: 18 });
    expect(paths.map(({ input: at }) => at)).toContain("courseStarts");
    const atOrifice = ask([...traced, visitPart("visit-1", []), mishapPart("mishap-1")]);
    expect(atOrifice.input).not.toHaveProperty("courseStarts");
    expect(atOrifice.paths.map(({ input: at }) => at)).not.toContain("courseStarts");
  });
});
