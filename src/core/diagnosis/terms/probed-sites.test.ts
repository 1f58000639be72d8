import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { narrowDefectIs, type ProbingDepths, probedSites } from "./probed-sites.ts";

const sites = ["mesiobuccal", "buccal", "distobuccal", "mesiolingual", "lingual", "distolingual"] as const;
const shallow = { mesiobuccal: 3, buccal: 2, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 } as const;
const at = (site: string, depths: ProbingDepths) => probedSites(depths).find((one) => one.site === site);

/** Any probing: each site taken, at half millimetres, or left out. */
const probings = fc
  .tuple(...sites.map(() => fc.option(fc.integer({ min: 0, max: 24 }).map((half) => half / 2))))
  .map((taken): ProbingDepths => Object.fromEntries(sites.flatMap((site, i) => pairOf(site, taken[i]))));
const pairOf = (site: string, depth: number | null | undefined) => (typeof depth === "number" ? [[site, depth]] : []);

describe("diagnosis C8: the sites of a probing", () => {
  // Lee et al. 2023 (abstract, seen): teeth with an isolated depth of 5 mm or more; 3 mm is common practice.
  it("are deep beyond 3 mm, and narrow from 5 mm on between two of at most 3 mm", () => {
    expect(at("lingual", { ...shallow, lingual: 3 })).toMatchObject({ deep: "no", narrow: "no" });
    expect(at("lingual", { ...shallow, lingual: 3.1 })).toMatchObject({ deep: "yes", narrow: "no" });
    expect(at("lingual", { ...shallow, lingual: 4.9 })).toMatchObject({ deep: "yes", narrow: "no" });
    expect(at("lingual", { ...shallow, lingual: 5 })).toMatchObject({ deep: "yes", narrow: "yes", depth: 5 });
    expect(at("lingual", { ...shallow, lingual: 9, mesiolingual: 3.1 })?.narrow).toBe("no");
  });

  it("have their neighbours round the tooth, round its corners as well", () => {
    for (const [corner, neighbour] of [
      ["mesiobuccal", "mesiolingual"],
      ["distobuccal", "distolingual"],
    ] as const) {
      expect(at(corner, { ...shallow, [corner]: 6 })?.narrow).toBe("yes");
      expect(at(corner, { ...shallow, [corner]: 6, [neighbour]: 4 })?.narrow).toBe("no");
    }
    expect(at("buccal", { ...shallow, buccal: 6, lingual: 6 })?.narrow).toBe("yes");
  });

  it("are unknown where they or a neighbour that would tell were not taken", () => {
    expect(at("buccal", {})).toEqual({ site: "buccal", deep: "unknown", narrow: "unknown" });
    expect(at("buccal", { mesiobuccal: 2, buccal: 9 })?.narrow).toBe("unknown");
    expect(at("buccal", { mesiobuccal: 4, buccal: 9 })?.narrow).toBe("no");
  });

  it("make a narrow defect by one site, and none by all six alone", () => {
    expect(narrowDefectIs({ mesiobuccal: 2, buccal: 9, distobuccal: 2 })).toBe("yes");
    expect(narrowDefectIs(shallow)).toBe("no");
    const { lingual: _, ...five } = shallow;
    expect(narrowDefectIs(five)).toBe("unknown");
    expect(narrowDefectIs({})).toBe("unknown");
  });

  it("stand the same when mesial and distal, or buccal and lingual, change sides", () => {
    const across = (one: string): string =>
      one.startsWith("mesio") ? one.replace("mesio", "disto") : one.replace("disto", "mesio");
    const inward = (one: string): string =>
      one.endsWith("buccal") ? one.replace("buccal", "lingual") : one.replace("lingual", "buccal");
    fc.assert(
      fc.property(probings, fc.constantFrom(across, inward), (depths, turn) => {
        const turned = Object.fromEntries(Object.entries(depths).map(([site, depth]) => [turn(site), depth]));
        for (const one of probedSites(depths))
          expect(at(turn(one.site), turned)).toEqual({ ...one, site: turn(one.site) });
      }),
    );
  });

  it("never change a yes or a no when a site that was left out is taken at last", () => {
    fc.assert(
      fc.property(probings, fc.constantFrom(...sites), fc.integer({ min: 0, max: 12 }), (depths, site, depth) => {
        fc.pre(depths[site] === undefined);
        const later = { ...depths, [site]: depth };
        for (const { narrow, site: one } of probedSites(depths))
          if (narrow !== "unknown") expect(at(one, later)?.narrow).toBe(narrow);
      }),
    );
  });
});
