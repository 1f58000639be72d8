import { describe, expect, it } from "vitest";
import type { BodyOf } from "../parts.ts";
import { emptyVisit } from "./visit-for-tests.ts";
import { visitTimelineOf } from "./visit-timeline.ts";

const visit: BodyOf<"visit"> = {
  ...emptyVisit,
  minutes: 60,
  ...{ timeOut: "toothAndSideChecked", isolation: { rubberDam: "used" } },
  timeOutCheck: { tooth: "26", filmSide: "checked", by: "the assistant", atMin: 4 },
  holdPoints: [{ at: "access", seenBy: "supervisor", says: "good", atMin: 15 }],
  steps: [{ says: "Access", doneAtMin: 14 }, { says: "Film", done: true }, { says: "Open one" }],
  anaesthetic: [{ agent: "articaine", percent: 4, cartridgeMl: 1.7, cartridges: 1, atMin: 2 }],
  irrigation: [
    { solution: "EDTA", percent: 17, volumeMl: 3, minutes: 1, atMin: 40, activated: "ultrasonic", canal: "MB1" },
    { solution: "sodium hypochlorite", volumeMl: 5, minutes: 10, atMin: 20, activated: "no" },
    { solution: "other", named: "own rinse", volumeMl: 5, minutes: 1, activated: "no" },
  ],
  instruments: [{ canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" }],
  ultrasonics: [{ on: "fragment", seconds: 30, restSeconds: 60, coolant: "none", atMin: 50 }],
  solvent: [{ solvent: "chloroform", volumeMl: 0.1, atMin: 10 }],
  temporary: { material: "glass-ionomer cement", thicknessMm: 4 },
  log: [{ atMin: 30, says: "a break" }],
};
const marksOf = (name: string) => visitTimelineOf(visit).lanes.find((lane) => lane.name === name)?.marks;
const untimed = (name: string) => visitTimelineOf(visit).withoutMinute.find((lane) => lane.name === name)?.says;

describe("a visit over its minutes", () => {
  it("has a lane for each sort, in the order of its minutes", () => {
    expect(visitTimelineOf(visit).lanes.map(({ name }) => name)).toEqual([
      ...["Checks", "Steps", "Anaesthetic", "Irrigants", "Ultrasound", "Solvent", "Notes"],
    ]);
    expect(marksOf("Checks")).toEqual([
      { fromMin: 4, says: "time-out" },
      { fromMin: 15, says: "access, seen by the supervisor" },
    ]);
    expect(marksOf("Irrigants")).toEqual([
      { fromMin: 20, toMin: 30, says: "sodium hypochlorite, 5 ml, 10 min" },
      { fromMin: 40, toMin: 41, says: "MB1 EDTA 17 %, 3 ml, 1 min, activated" },
    ]);
    expect(marksOf("Ultrasound")).toEqual([{ fromMin: 50, toMin: 50.5, says: "fragment, 30 s, no coolant" }]);
    expect(marksOf("Steps")).toEqual([{ fromMin: 14, says: "Access" }]);
  });

  it("keeps apart what has no minute, and draws no step that is open", () => {
    expect(untimed("Irrigants")).toEqual(["own rinse, 5 ml, 1 min"]);
    expect(untimed("Instruments")).toEqual(["MB1 25/.06"]);
    expect(untimed("Steps")).toEqual(["Film"]);
    expect(untimed("Checks")).toEqual(["rubber dam"]);
    expect(untimed("Left in the tooth")).toEqual(["glass-ionomer cement, 4 mm"]);
    expect(JSON.stringify(visitTimelineOf(visit))).not.toContain("Open one");
  });

  it("says of a time-out without a match which tooth was named", () => {
    const other = visitTimelineOf({ ...visit, timeOut: "notDone" });
    expect(other.lanes[0]?.marks[0]?.says).toBe("time-out: 26 named");
  });

  it("of an empty visit holds nothing", () => {
    expect(visitTimelineOf(emptyVisit)).toEqual({ lanes: [], withoutMinute: [] });
  });
});
