import { describe, expect, it } from "vitest";
import { withBareSourceNames, withSourceNames } from "./source-name.ts";

describe("sources in a sentence", () => {
  it("are named where they stand by their bare id; other words stay", () => {
    expect(withBareSourceNames("wu-2011 for torsion, cheung-darvell-2007 (memory); in-line as of 2011")).toBe(
      "Wu 2011 for torsion, Cheung Darvell 2007 (memory); in-line as of 2011",
    );
  });

  it("are named in brackets alone where other dashes may stand", () => {
    expect(withSourceNames("2.7 points (spili-2005: 134 of 146); less (ese-2019-deep-caries; not printed)")).toBe(
      "2.7 points (Spili 2005: 134 of 146); less (ESE 2019, deep caries; not printed)",
    );
    expect(withSourceNames("Spring-back-2020 (wu-2011)")).toBe("Spring-back-2020 (Wu 2011)");
  });
});
