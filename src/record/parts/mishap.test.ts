import { describe, expect, it } from "vitest";
import { mishapPart } from "./mishap.ts";

const read = (more: object) =>
  mishapPart.body.safeParse({
    ...{ on: "2026-01-02", what: "other", third: "notRecorded", bend: "notRecorded", handled: "open" },
    ...{ toldPatient: "notYet", story: "" },
    ...more,
  });
const pathsOf = (more: object) => read(more).error?.issues.map(({ path }) => path.join("."));

const irrigant = (more: object) => ({
  irrigantExtrusion: { solution: "", needleBound: "notKnown", signs: [], ...more },
});
const perforation = (aboveBoneMm: number) => ({
  perforation: { side: "notKnown", bleeding: "notAsked", pocket: "notAsked", aboveBoneMm },
});
const missed = (since: string) => ({ missedCanal: { foundBy: "", treated: "notYet", since } });
const swallowed = (more: object) => ({
  swallowedOrInhaled: { object: "", went: "notKnown", signs: [], found: "notYet", ...more },
});

describe("what a mishap notes where its steps ask for it", () => {
  it.each([
    irrigant({ needle: "open", needleFromStopMm: 17.5, time: "14:02", pain: 0, spread: "the eye" }),
    irrigant({ signs: ["ulcer", "dyingTissue"], pain: 10 }),
    ...[-20, 0, 20].map(perforation),
    ...["1990-05-01", "2026-01-02"].map(missed),
    swallowed({ time: "09:05", counted: "9 out, 8 in" }),
  ])("is taken: %j", (more) => {
    expect(read(more).error).toBeUndefined();
  });

  it.each([
    [irrigant({ pain: 11 }), "irrigantExtrusion.pain"],
    [irrigant({ pain: 2.5 }), "irrigantExtrusion.pain"],
    [irrigant({ time: "24:00" }), "irrigantExtrusion.time"],
    [irrigant({ needleFromStopMm: -1 }), "irrigantExtrusion.needleFromStopMm"],
    [perforation(20.1), "perforation.aboveBoneMm"],
    [missed("2026-01-03"), "missedCanal.since"],
    [swallowed({ time: "9:05" }), "swallowedOrInhaled.time"],
  ])("is refused at its place: %j", (more, path) => {
    expect(pathsOf(more)).toEqual([path]);
  });
});
