import { describe, expect, it } from "vitest";
import { planPart } from "./plan.ts";

const old = {
  ...{ madeOn: "2026-01-10", chosen: "retreat", because: "A canal was missed.", risksNamed: ["fracture"] },
  options: [{ way: "retreat", forIt: "reaches it", againstIt: "two visits" }],
};
const own = { way: "retreat", what: "healed", kind: "healing", events: 18, n: 20, followUp: "a year", from: "logbook" };
const entry = "ab".repeat(32);

describe("a plan", () => {
  it("opens as it was written before it held entries, the canal's form and figures of one's own", () => {
    expect(planPart.version).toBe(1);
    expect(planPart.body.parse(old)).toEqual(old);
  });

  it("keeps what stood when it was made", () => {
    const body = { ...old, planEntry: entry, difficultyEntry: entry, altered: "respected", crowned: "no", own: [own] };
    expect(planPart.body.parse(body)).toEqual(body);
  });

  it.each([
    [{ planEntry: "entry-1" }, ["planEntry"]],
    [{ difficultyEntry: "AB".repeat(32) }, ["difficultyEntry"]],
    [{ altered: "perhaps" }, ["altered"]],
    [{ own: [{ ...own, events: undefined, n: undefined, percent: 101 }] }, ["own", 0, "percent"]],
    [{ own: [{ ...own, from: " " }] }, ["own", 0, "from"]],
    [{ chosen: "wait" }, ["chosen"]],
  ])("refuses %j at its place", (change, path) => {
    expect(planPart.body.safeParse({ ...old, ...change }).error?.issues[0]?.path).toEqual(path);
  });
});
