import { describe, expect, it } from "vitest";
import type { BodyOf } from "../parts.ts";
import { emptyVisit } from "./visit-for-tests.ts";
import { openBeforeLeaving, visitStanding } from "./visit-standing.ts";

type Visit = BodyOf<"visit">;
const of = (visit: Partial<Visit>, leads: string) =>
  visitStanding({ ...emptyVisit, ...visit }).find((one) => one.leads === leads);
const openOf = (visit: Partial<Visit>) => openBeforeLeaving({ ...emptyVisit, ...visit }).map(({ leads }) => leads);
const set = { set: "", steriliserCycle: "" };
const seen = { at: "access", seenBy: "supervisor", says: "" } as const;

describe("how a visit stands", () => {
  it("of a new visit: everything is open and nothing is to be looked at", () => {
    const standing = visitStanding(emptyVisit);
    expect(standing.map(({ leads, stands }) => [leads, stands])).toEqual([
      ["timeOut", "open"],
      ["isolation", "open"],
      ["history", "open"],
      ["count", "open"],
    ]);
  });

  it("asks for the time-out once the access is noted, by a step or by a hold point", () => {
    const access = { says: "Access", about: "access" } as const;
    expect(of({ steps: [{ ...access, doneAtMin: 9 }] }, "timeOut")?.stands).toBe("look");
    expect(of({ steps: [access] }, "timeOut")?.stands).toBe("open");
    expect(of({ holdPoints: [seen] }, "timeOut")?.stands).toBe("look");
    expect(of({ holdPoints: [seen], timeOut: "toothAndSideChecked" }, "timeOut")?.stands).toBe("done");
  });

  it("looks at a time-out that named another tooth", () => {
    const timeOutCheck = { tooth: "16", filmSide: "checked", by: "the assistant" } as const;
    expect(of({ timeOutCheck }, "timeOut")).toMatchObject({ stands: "look", says: "time-out: 16 was named" });
  });

  it("takes a tooth without a dam for answered once there is a reason", () => {
    expect(of({ isolation: { rubberDam: "used" } }, "isolation")?.stands).toBe("done");
    expect(of({ isolation: { rubberDam: "notUsed" } }, "isolation")?.stands).toBe("look");
    expect(of({ isolation: { rubberDam: "notUsed", whyNot: "cotton rolls" } }, "isolation")).toMatchObject({
      ...{ stands: "done", says: "without rubber dam: cotton rolls" },
    });
  });

  it("counts hold points that steps ask for and nobody looked at", () => {
    const steps = [{ says: "Access", holdPoint: "access" } as const, { says: "Cone", holdPoint: "coneFit" } as const];
    expect(of({ steps }, "holdPoint")?.says).toBe("2 hold points open");
    expect(of({ steps, holdPoints: [seen] }, "holdPoint")?.says).toBe("1 hold point open");
    expect(of({ holdPoints: [{ ...seen, seenBy: "nobody" }] }, "holdPoint")?.stands).toBe("look");
    expect(of({ holdPoints: [seen] }, "holdPoint")?.stands).toBe("done");
  });

  it.each([
    [{}, "open", "instruments not counted"],
    [{ countedOut: 14 }, "open", "14 out, in not counted"],
    [{ countedIn: 14 }, "open", "out not counted, 14 in"],
    [{ countedOut: 14, countedIn: 14 }, "done", "14 out, 14 in"],
    [{ countedOut: 14, countedIn: 13 }, "look", "14 out, 13 in"],
    [{ countedOut: 0, countedIn: 0 }, "done", "0 out, 0 in"],
  ])("of a count %j is %s: %s", (counted, stands, says) => {
    expect(of({ instrumentSet: { ...set, ...counted } }, "count")).toMatchObject({ stands, says });
  });

  it("counts the steps that are open", () => {
    const steps = [{ says: "a", doneAtMin: 0 }, { says: "b", leftOut: "" }, { says: "c" }];
    expect(of({ steps }, "steps")?.says).toBe("1 of 3 steps open");
    expect(of({ steps: steps.slice(0, 2) }, "steps")?.stands).toBe("done");
  });
});

describe("what is open before the patient leaves", () => {
  const closed: Partial<Visit> = {
    ...{ timeOut: "toothAndSideChecked", isolation: { rubberDam: "used" }, historyConfirmed: true },
    ...{ told: "what was done", nextOn: "2026-03-20" },
  };
  it("is nothing where all of it is written", () => expect(openOf(closed)).toEqual([]));

  it("is each thing that is missing, and where it is written", () => {
    expect(openOf({})).toEqual(["timeOut", "isolation", "history", "told", "next"]);
    expect(openOf({ ...closed, told: "", nextOn: undefined } as Partial<Visit>)).toEqual(["told", "next"]);
    expect(openOf({ ...closed, startedAt: "2026-03-12T14:00:00Z" })).toEqual(["clock"]);
    expect(openOf({ ...closed, startedAt: "2026-03-12T14:00:00Z", endedAt: "2026-03-12T15:00:00Z" })).toEqual([]);
  });

  it("asks for the count once instruments were used or counted out", () => {
    const use = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" } as const;
    expect(openOf({ ...closed, instruments: [use] })).toEqual(["count"]);
    expect(openOf({ ...closed, instrumentSet: { ...set, countedOut: 3 } })).toEqual(["count"]);
    expect(openOf({ ...closed, instrumentSet: { ...set, countedOut: 3, countedIn: 2 } })).toEqual(["count"]);
  });

  it("asks for a lot of what stays in the tooth, and for a temporary filling's thickness", () => {
    const lots = [{ material: "paste", lot: "A1" }];
    expect(openOf({ ...closed, medicament: { kind: "calciumHydroxide" } })).toEqual(["lots"]);
    expect(openOf({ ...closed, medicament: { kind: "none" } })).toEqual([]);
    expect(openOf({ ...closed, medicament: { kind: "calciumHydroxide" }, lots })).toEqual([]);
    expect(openOf({ ...closed, temporary: { material: "cement" }, lots })).toEqual(["temporary"]);
    expect(openOf({ ...closed, temporary: { material: "cement", thicknessMm: 4 }, lots })).toEqual([]);
    expect(openOf({ ...closed, orificeBarrier: "composite" })).toEqual(["lots"]);
  });
});
