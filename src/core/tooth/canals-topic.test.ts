import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import { canalNames } from "./canal-root.ts";
import { canalSequence, vertucciType } from "./canal-sequence.ts";
import { canalsTopic } from "./canals-topic.ts";
import { teeth } from "./teeth.ts";
import { usualRoots } from "./usual-roots.ts";

const canals = (tooth: string, roots: readonly object[]) => answer(canalsTopic, { tooth, roots });
const refusalOf = (tooth: string, roots: readonly object[]): Refusal => {
  try {
    canals(tooth, roots);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("nothing was refused");
};
const root = (name: string, levels: readonly unknown[], more: object = {}) => ({ name, levels, ...more });

describe("canals C1, C2: counts and names", () => {
  it("counts roots, canals at the orifices and foramina", () => {
    const given = [root("MB", [2, 1], { orifices: ["MB1", "MB2"] }), root("DB", [1]), root("P", [1, 2])];
    expect(canals("26", given)).toMatchObject({ rootCount: 3, canalCount: 4, foramenCount: 4 });
  });

  it("names canals after their root, numbered where there are several", () => {
    expect(canalNames({ name: "P", levels: [1, 2] })).toEqual(["P"]);
    expect(canalNames({ name: "M", levels: [3] })).toEqual(["M1", "M2", "M3"]);
    expect(canalNames({ name: "M", levels: [2], orifices: ["MB", "ML"] })).toEqual(["MB", "ML"]);
  });
});

describe("canals C3: sequence", () => {
  it("writes equal neighbours once", () => {
    expect(canals("44", [root("R", [2, 2, 1])]).roots[0]?.sequence).toBe("2-1");
  });

  it("never holds equal neighbours, and doubling every level changes nothing", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 6 }), (levels) => {
        const sequence = canalSequence(levels);
        expect(sequence.every((count, at) => count !== sequence[at + 1])).toBe(true);
        expect(canalSequence(levels.flatMap((level) => [level, level]))).toEqual(sequence);
        expect([sequence[0], sequence.at(-1)]).toEqual([levels[0], levels.at(-1)]);
      }),
    );
  });
});

describe("canals C4: Vertucci's types", () => {
  // Vertucci 1984, table of types (value from memory).
  it.each([
    ["I", [1]],
    ["II", [2, 1]],
    ["III", [1, 2, 1]],
    ["IV", [2]],
    ["V", [1, 2]],
    ["VI", [2, 1, 2]],
    ["VII", [1, 2, 1, 2]],
    ["VIII", [3]],
  ])("%s", (type, levels) => {
    expect(canals("45", [root("R", levels)]).roots[0]?.vertucci).toBe(type);
  });

  it("gives null to every other sequence and keeps it", () => {
    expect(canals("45", [root("R", [3, 1])]).roots[0]).toMatchObject({ sequence: "3-1", vertucci: null });
    expect(canals("45", [root("R", [2, 1, 2, 1])]).roots[0]).toMatchObject({ sequence: "2-1-2-1", vertucci: null });
    expect(vertucciType([4])).toBeNull();
  });
});

describe("canals C5: the code", () => {
  it("of a lone root has no root name: the published figure of tooth 25", () => {
    // BMC Oral Health 2024, figure 1 of PMC11084092 (seen).
    expect(canals("25", [root("R", [1, 1, 1])]).code).toEqual({ plain: "^1 25 ^1", display: "¹25¹" });
  });

  // Composed by the rule of Ahmed et al. 2017 (value from memory).
  it.each([
    ["14", [root("B", [1]), root("P", [1])], "^2 14 B^1 P^1", "²14 B¹ P¹"],
    ["16", [root("MB", [2, 1]), root("DB", [1]), root("P", [1])], "^3 16 MB^2-1 DB^1 P^1", "³16 MB²⁻¹ DB¹ P¹"],
    ["46", [root("M", [2]), root("D", [1])], "^2 46 M^2 D^1", "²46 M² D¹"],
    ["46", [root("M", [2]), root("DB", [1]), root("DL", [1])], "^3 46 M^2 DB^1 DL^1", "³46 M² DB¹ DL¹"],
  ])("of %s", (tooth, roots, plain, display) => {
    expect(canals(tooth, roots).code).toEqual({ plain, display });
  });
});

describe("canals C6: C-shaped sections", () => {
  const shaped = (cShape: string, count: number) => ({ cShape, canals: count });

  it("keep their sequence, have no type of Vertucci, and say so", () => {
    const out = canals("37", [root("R", [shaped("C1", 1), shaped("C3", 2), shaped("C4", 1), shaped("C5", 0)])]);
    expect(out.roots[0]).toMatchObject({ sequence: "1-2-1", vertucci: null });
    expect(out.foramenCount).toBe(1);
    expect(out.notes.join(" ")).toContain("C1, C3, C4, C5");
    expect(out.notes.join(" ")).toContain("no lumen");
  });

  it.each([
    ["C1", 2],
    ["C2", 3],
    ["C3", 1],
    ["C4", 2],
  ])("%s does not go with %i canals", (cShape, count) => {
    expect(refusalOf("37", [root("R", [shaped(cShape, count)])]).faults[0]).toMatchObject({
      path: "roots[0].levels[0]",
    });
  });

  it("C5 has no lumen: it is refused at the orifice and with a canal", () => {
    expect(refusalOf("37", [root("R", [shaped("C5", 0)])]).faults[0]?.says).toContain("orifice");
    expect(refusalOf("37", [root("R", [1, shaped("C5", 1)])]).faults[0]?.says).toContain("C5");
    expect(refusalOf("37", [root("R", [1, { canals: 0 }])]).faults[0]?.says).toContain("only with cShape C5");
  });
});

describe("canals C7: an extra root of a lower molar", () => {
  it.each([
    ["a distolingual root beside a distobuccal one", "46", [root("M", [2]), root("DB", [1]), root("DL", [1])]],
    ["a root on the lingual side", "36", [root("M", [2]), root("D", [1]), root("RE", [1], { side: "lingual" })]],
    ["beside two mesial roots", "36", [root("MB", [1]), root("ML", [1]), root("D", [1]), root("DL", [1])]],
    ["of a primary molar", "85", [root("M", [2]), root("D", [1]), root("DL", [1])]],
    ["before a buccal one", "46", [root("M", [1]), root("D", [1]), root("DL", [1]), root("DB", [1])]],
  ])("entomolaris: %s", (_, tooth, roots) => {
    expect(canals(tooth, roots).extraRoot).toBe("radix entomolaris");
  });

  it.each([
    ["beside a distal root", [root("M", [2]), root("D", [1]), root("DB", [1])]],
    ["beside a mesial root", [root("M", [2]), root("MB", [1]), root("D", [1])]],
    ["by its side alone", [root("M", [2]), root("D", [1]), root("RP", [1], { side: "buccal" })]],
  ])("paramolaris: %s", (_, roots) => {
    expect(canals("47", roots).extraRoot).toBe("radix paramolaris");
  });

  it.each([
    ["two separate mesial roots", "46", [root("MB", [1]), root("ML", [1]), root("D", [1])]],
    ["a second canal in the distal root", "46", [root("M", [2]), root("D", [2], { orifices: ["DB", "DL"] })]],
    ["a middle mesial canal", "46", [root("M", [3], { orifices: ["MB", "MM", "ML"] }), root("D", [1])]],
    ["three roots above", "16", [root("MB", [1]), root("DB", [1]), root("P", [1])]],
    ["three roots of a premolar", "44", [root("MB", [1]), root("DB", [1]), root("L", [1])]],
  ])("none: %s", (_, tooth, roots) => {
    expect(canals(tooth, roots).extraRoot).toBeNull();
  });

  it("is not computed while the third root has no side", () => {
    const out = canals("46", [root("M", [2]), root("D", [1]), root("X", [1])]);
    expect(out).not.toHaveProperty("extraRoot");
    expect(out.notComputed).toEqual([{ name: "extraRoot", why: expect.stringContaining("root X") }]);
  });
});

describe("canals C8: usual roots", () => {
  it("start every one of the 52 teeth without a fault, a note on the count, or an extra root", () => {
    for (const { twoDigit } of teeth) {
      const out = answer(canalsTopic, { tooth: twoDigit, roots: usualRoots(twoDigit).roots });
      expect(out.extraRoot, twoDigit).toBeNull();
      expect(out.notes.filter((note) => note.includes("unusual"))).toEqual([]);
    }
  });

  it.each([
    ["11", 1],
    ["14", 2],
    ["35", 1],
    ["26", 3],
    ["46", 2],
    ["55", 3],
    ["74", 2],
    ["83", 1],
  ])("%s starts with %i", (tooth, count) => {
    expect(usualRoots(tooth).roots).toHaveLength(count);
  });

  it("notes a count that is unusual, and does not refuse it", () => {
    const out = canals("35", [root("B", [1]), root("L", [1])]);
    expect(out.rootCount).toBe(2);
    expect(out.notes[0]).toContain("2 roots are unusual for the lower left second premolar; 1 is usual");
    expect(canals("16", [root("R", [1])]).notes[0]).toContain("1 root is unusual");
  });
});

describe("canals C9: what contradicts itself is refused with its path", () => {
  it.each([
    ["unknown tooth", "49", [root("M", [1])], "tooth"],
    ["root named twice", "46", [root("M", [1]), root("M", [1])], "roots[1].name"],
    ["canal named twice", "46", [root("M", [1], { orifices: ["D"] }), root("D", [1])], "roots[1].orifices"],
    ["too few orifices", "46", [root("M", [2], { orifices: ["MB"] })], "roots[0].orifices"],
    ["side against name", "46", [root("DL", [1], { side: "buccal" })], "roots[0].side"],
    ["palatal root below", "46", [root("P", [1])], "roots[0].name"],
    ["no level", "46", [root("M", [])], "roots[0].levels"],
    ["a level without canals", "46", [root("M", [0])], "roots[0].levels[0]"],
    ["a name with a dash", "46", [root("M-1", [1])], "roots[0].name"],
    ["no roots", "46", [], "roots"],
  ])("%s", (_, tooth, roots, path) => {
    expect(refusalOf(tooth, roots).faults.map((fault) => fault.path)).toContain(path);
  });

  it("collects every fault at once", () => {
    const faults = refusalOf("46", [root("P", [2], { orifices: ["A"], side: "buccal" }), root("P", [1])]).faults;
    expect(new Set(faults.map(({ path }) => path))).toEqual(
      new Set(["roots[0].orifices", "roots[0].side", "roots[0].name", "roots[1].name"]),
    );
  });
});

describe("canals C10: how often", () => {
  // Vertucci 1984: type II in 37 % of mesiobuccal roots of upper first molars (seen in a summary).
  it("names the share of a type in the series, with its mark", () => {
    const out = canals("26", [root("MB", [2, 1]), root("DB", [1]), root("P", [1])]);
    expect(out.notes).toEqual([expect.stringMatching(/^Type II: 37 % .* memory/)]);
  });

  it("says where a type is not in the table, and nothing where there is no row", () => {
    expect(canals("35", [root("R", [2])]).notes[0]).toContain("not in the table");
    expect(canals("11", [root("R", [2])]).notes).toEqual([]);
    // The row of the upper first premolar counts whole teeth, so two roots with a canal each are not its type I.
    expect(canals("14", [root("B", [1]), root("P", [1])]).notes).toEqual([]);
  });
});
