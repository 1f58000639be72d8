import { describe, expect, it } from "vitest";
import { newBodies } from "../../new-bodies.ts";
import { countFault, withCounted } from "./with-counted.ts";

const visit = newBodies.visit("2026-03-12", {});
const typed = { set: " set 4 ", steriliserCycle: "", countedOut: "14", countedIn: "" };

describe("a count of instruments", () => {
  it("is noted as it was counted, and what was not counted stays open", () => {
    const { next, says, differs } = withCounted(visit, typed);
    expect(next.instrumentSet).toEqual({ set: "set 4", steriliserCycle: "", countedOut: 14 });
    expect(says).toBe("14 out, not counted in");
    expect(differs).toBeUndefined();
  });
  it("says loudly where the two differ", () => {
    expect(withCounted(visit, { ...typed, countedIn: "13" }).differs).toMatch(/^14 out, 13 in: look/);
    expect(withCounted(visit, { ...typed, countedIn: "14" }).differs).toBeUndefined();
  });
  it.each(["-1", "1.5", "12345", "ten"])("is not %s", (text) => expect(countFault(text)).toMatch(/whole number/));
  it.each(["", "0", " 14 "])("may be %j", (text) => expect(countFault(text)).toBeUndefined());
});
