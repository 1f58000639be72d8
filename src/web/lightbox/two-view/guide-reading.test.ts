import { describe, expect, it } from "vitest";
import { entry } from "./case-for-tests.ts";
import { anglesAtHand, guideOf, guideRead, isAbout, wantedDeg } from "./guide-reading.ts";

const guide = (about: string, more: Parameters<typeof entry>[1] = {}) => ({
  ...entry("", more),
  topic: "tubeShift",
  subject: `tubeShift of ${about}`,
});
const candidates = [{ horizontalAngleDeg: 20, outOfFilmHalfWidthDeg: 8, settles: true, sideToldShare: 1 }];

describe("the guide before an exposure", () => {
  it("is the last of its canal that stands", () => {
    const ledger = [
      guide("DL film-1", { output: { candidates } }),
      guide("DL film-2", { refused: ["no"] }),
      guide("DLX film-1", { output: { candidates } }),
    ];
    expect(guideOf(ledger, "DL")?.subject).toBe("tubeShift of DL film-1");
    expect(guideOf(ledger.slice(1, 2), "DL")?.refused).toEqual(["no"]);
    expect(guideOf(ledger, "MB")).toBeUndefined();
  });

  it("is read with what it recommends, or without where nothing settles it", () => {
    const recommended = { horizontalAngleDeg: 20, alsoDeg: -20, why: "At 20 degrees." };
    expect(guideRead(guide("DL f", { output: { candidates, recommended } }))).toMatchObject({
      candidates,
      recommended,
    });
    expect(guideRead(guide("DL f", { output: { candidates } }))?.recommended).toBeUndefined();
    expect(guideRead(guide("DL f", { refused: ["no"] }))).toBeUndefined();
  });

  it("names the films at hand and the bend that is looked for", () => {
    const input = { views: [{ horizontalAngleDeg: 0 }, { horizontalAngleDeg: -8 }], wanted: { outOfFilmDeg: 20 } };
    expect([anglesAtHand({ input }), wantedDeg({ input })]).toEqual([[0, -8], 20]);
    expect([anglesAtHand({ input: {} }), wantedDeg({ input: {} })]).toEqual([[], undefined]);
  });

  it.each([
    ["mesial canals of lower molars", "46", true],
    ["mesial canals of lower molars", "26", false],
    ["mesial canals of lower molars", "45", false],
    ["upper first premolar: the canine lies over it", "14", true],
    ["upper first premolar: the canine lies over it", "15", false],
  ])("a finding about %s speaks of %s: %s", (words, tooth, is) => {
    expect(isAbout(words, tooth)).toBe(is);
  });
});
