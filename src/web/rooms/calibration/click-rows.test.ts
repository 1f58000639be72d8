import { describe, expect, it } from "vitest";
import { offeredOf, readClickAnswer } from "./click-answer.ts";
import { outliersInWords, rowsAside, rowsByDirection, rowsByKind, rowsByTool } from "./click-rows.ts";

const ends = { low: 0.73, high: 0.94, level: 0.95 };
const written = {
  ...{ n: 60, clicks: 120, sigmaPx: 0.823, sigmaColumnPx: 0.81, sigmaRowPx: 0.84, truths: 50 },
  ...{ driftColumnPx: -0.1, driftRowPx: 0.2, biasColumnPx: 0.3, biasRowPx: -1.2, missPx: 2.345 },
  intervals: { sigmaColumnPx: ends, sigmaRowPx: ends, driftColumnPx: { low: -0.4, high: 0.2, level: 0.95 } },
  byName: [{ name: "apex", n: 20, sigmaPx: 0.9, interval: ends }],
  byTool: [{ tool: "keyboard", n: 1, sigmaPx: 0.5, interval: ends }],
  outliers: [{ film: "film-03", name: "crest", apartPx: 40.2, expectedPx: 6.1 }],
  ...{ basis: { formula: "f", assumptions: [], sources: [] }, cautions: ["c"], notComputed: [] },
};
const answer = readClickAnswer(written);
if (answer === undefined) throw new Error("the answer is not read");

describe("an answer in words", () => {
  it("is read as the topic gives it, and not at all in another form", () => {
    expect(answer.sigmaPx).toBe(0.823);
    expect(readClickAnswer({ ...written, sigmaPx: "0.8" })).toBeUndefined();
    expect(readClickAnswer(undefined)).toBeUndefined();
  });

  it("names kinds, directions and tools with their intervals", () => {
    expect(rowsByKind(answer)).toEqual([
      { name: "Apex", value: "0.90\u202fpx", interval: "0.73\u20130.94", beside: "20 places" },
    ]);
    expect(rowsByDirection(answer).map(({ name }) => name)).toEqual(["Across", "Down"]);
    expect(rowsByTool(answer)).toMatchObject([{ name: "Keyboard both times", beside: "1 place" }]);
  });

  it("offers the error without the pairs out of line where there are some, else that of all", () => {
    expect(offeredOf({ ...answer, intervals: { sigmaPx: ends } })).toMatchObject({ which: "all", sigmaPx: 0.823 });
    const without = { n: 59, sigmaPx: 0.7, interval: ends };
    expect(offeredOf({ ...answer, without })).toMatchObject({ which: "without", n: 59, sigmaPx: 0.7 });
  });

  it("leaves out what no truth told", () => {
    expect(rowsAside(answer).map(({ name }) => name)).toEqual([
      "Second marks farther right",
      "Second marks farther down",
      "Right of the true place",
      "Below the true place",
      "Off the true place",
    ]);
    expect(rowsAside(answer)[0]).toMatchObject({ value: "\u22120.10\u202fpx", interval: "\u22120.40 to 0.20" });
    const { biasColumnPx: _u, biasRowPx: _v, missPx: _m, ...untold } = answer;
    expect(rowsAside(untold)).toHaveLength(2);
  });

  it("says of a pair out of line where it is and by how much", () => {
    expect(outliersInWords(answer)).toEqual([
      "crest of the bone on film 03: 40.20\u202fpx apart, 6.10\u202fpx at most expected",
    ]);
  });
});
