import { describe, expect, it } from "vitest";
import { probingStanding, standingInWords } from "./probing-standing.ts";

const shallow = { mesiobuccal: 3, buccal: 2, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 } as const;

describe("what stands out in a probing (diagnosis C8)", () => {
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
});
