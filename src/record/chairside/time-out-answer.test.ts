import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { teeth } from "../../core/tooth/teeth.ts";
import { partTypes } from "../parts.ts";
import { timeOutAnswer, withTimeOut } from "./time-out-answer.ts";
import { emptyVisit } from "./visit-for-tests.ts";

const check = { filmSide: "checked", by: "the assistant", atMin: 3 } as const;
const tooth = fc.constantFrom(...teeth.map(({ twoDigit }) => twoDigit));

describe("a time-out", () => {
  // ISO 3950: the first digit is the quadrant (1 upper right, 2 upper left, 3 lower left, 4 lower right), the second the place.
  it.each([
    ["26", "16", ["side"]],
    ["26", "36", ["row"]],
    ["26", "46", ["side", "row"]],
    ["26", "27", ["tooth"]],
    ["26", "37", ["row", "tooth"]],
    ["55", "15", ["tooth"]],
  ])("of %s that names %s differs in %j", (ofCase, named, differs) => {
    const answer = timeOutAnswer(ofCase, named);
    expect(answer).toMatchObject({ matches: false, differs });
    expect(answer.says).toContain(`Named: ${named}, `);
    expect(answer.says).toContain(`The case is of ${ofCase}, `);
  });

  it("is done where the tooth is the case's, with its minute", () => {
    const visit = withTimeOut(emptyVisit, "26", { ...check, tooth: "26" });
    expect(visit).toMatchObject({ timeOut: "toothAndSideChecked", timeOutCheck: { tooth: "26", atMin: 3 } });
    expect(visit.log).toBeUndefined();
    expect(partTypes.visit.body.safeParse(visit).error).toBeUndefined();
  });

  it("that names another tooth stays open, and what was named stays in the record and in the notes", () => {
    const visit = withTimeOut({ ...emptyVisit, timeOut: "toothAndSideChecked" }, "26", { ...check, tooth: "16" });
    expect(visit).toMatchObject({ timeOut: "notDone", timeOutCheck: { tooth: "16" } });
    expect(visit.log?.[0]?.says).toBe(
      "Time-out, not a match. Named: 16, upper right first molar. The case is of 26, upper left first molar: another side.",
    );
    const { atMin: _none, ...untimed } = check;
    expect(withTimeOut(emptyVisit, "26", { ...untimed, tooth: "16" }).log).toBeUndefined();
  });

  it("matches for one tooth alone", () => {
    fc.assert(
      fc.property(tooth, tooth, (one, other) => {
        const { matches, differs } = timeOutAnswer(one, other);
        expect(matches).toBe(one === other);
        expect(differs.length > 0).toBe(one !== other);
      }),
    );
  });
});
