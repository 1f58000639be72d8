import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { probingStanding, standingInWords } from "./probing-standing.ts";
import { probingSites } from "./words/test-words.ts";

const shallow = { mesiobuccal: 3, buccal: 2, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 } as const;

describe("what stands out in a probing", () => {
  it("is nothing round a tooth with depths of one to three", () => {
    expect(probingStanding(shallow)).toEqual({});
    expect(standingInWords(shallow)).toEqual([]);
    expect(probingStanding({})).toEqual({});
  });

  it("is narrow where a deep place lies between two shallow ones, round the corner as well", () => {
    expect(probingStanding({ ...shallow, buccal: 8 })).toEqual({ buccal: "narrow" });
    expect(probingStanding({ ...shallow, distobuccal: 6 })).toEqual({ distobuccal: "narrow" });
    expect(standingInWords({ ...shallow, mesiolingual: 9 })).toEqual(["mesiolingual 9 mm, narrow"]);
  });

  it("is deep and not narrow where a neighbour is deep too or was not taken", () => {
    expect(probingStanding({ ...shallow, distobuccal: 6, distolingual: 5 })).toEqual({
      distobuccal: "deep",
      distolingual: "deep",
    });
    const { mesiobuccal: _, ...without } = shallow;
    expect(probingStanding({ ...without, buccal: 8 })).toEqual({ buccal: "deep" });
  });

  it("begins beyond 3 mm, and is narrow from 5 mm on", () => {
    expect(probingStanding({ ...shallow, lingual: 3 })).toEqual({});
    expect(probingStanding({ ...shallow, lingual: 4 })).toEqual({ lingual: "deep" });
    expect(probingStanding({ ...shallow, lingual: 5 })).toEqual({ lingual: "narrow" });
    expect(probingStanding({ ...shallow, lingual: 9, mesiolingual: 3.5 }).lingual).toBe("deep");
  });

  it("names the same places when mesial and distal change sides", () => {
    const mirror = (site: string) =>
      site.startsWith("mesio") ? site.replace("mesio", "disto") : site.replace("disto", "mesio");
    const turned = (of: object) => Object.fromEntries(Object.entries(of).map(([site, value]) => [mirror(site), value]));
    const depths = fc.tuple(...probingSites.map(() => fc.option(fc.integer({ min: 0, max: 20 }))));
    fc.assert(
      fc.property(depths, (taken) => {
        const body = Object.fromEntries(
          probingSites.flatMap((site, at) => (taken[at] === null ? [] : [[site, taken[at]]])),
        );
        expect(probingStanding(turned(body))).toEqual(turned(probingStanding(body)));
      }),
    );
  });
});
