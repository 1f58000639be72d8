import { describe, expect, it } from "vitest";
import { caseOfMoments, type Moment, write } from "./case-of-moments.ts";

const presenting: Moment = {
  ...{ day: "2024-01-09", time: "09:00", words: "Presenting recorded" },
  writes: [
    write("case", "case-1", {
      ...{
        pseudonym: "P-1",
        birthYear: 1980,
        sex: "female",
        tooth: "11",
        treatment: "watch",
        presentedOn: "2024-01-09",
      },
      ...{ complaint: "", referredFor: "", background: "", demo: true },
    }),
  ],
};
const review = (day: string, says: string): Moment => ({
  ...{ day, time: "10:00", words: "Read" },
  writes: [write("review", "review-1", { on: day, by: "peer", says, signed: false, answer: "" })],
});

describe("a case told in moments", () => {
  it("stands in the order of time and counts the revisions of a part that is written again", () => {
    const file = caseOfMoments("demo-x", [review("2024-03-01", "b"), presenting, review("2024-02-01", "a")]);
    expect(file.gestures.map(({ at }) => at)).toEqual([
      "2024-01-09T09:00:00Z",
      "2024-02-01T10:00:00Z",
      "2024-03-01T10:00:00Z",
    ]);
    expect(file.gestures.map(({ operations }) => operations[0]?.baseRevision)).toEqual([0, 0, 1]);
  });

  it("is refused with the moment's words where a body does not fit, and where a moment changes nothing", () => {
    const wrong = { ...presenting, writes: [{ ...presenting.writes[0], body: {} }] } as unknown as Moment;
    expect(() => caseOfMoments("demo-x", [wrong])).toThrow(
      /demo-x, "Presenting recorded": Cannot record case.*pseudonym/,
    );
    expect(() =>
      caseOfMoments("demo-x", [presenting, review("2024-02-01", "a"), review("2024-03-01", "a")]),
    ).not.toThrow();
    const twice = { ...presenting, time: "09:30" };
    expect(() => caseOfMoments("demo-x", [presenting, twice])).toThrow(/it changes nothing/);
  });
});
