import { describe, expect, it } from "vitest";
import { countActs, rootActs, sideName } from "./root-acts.ts";
import { firstMolars, usualRoots } from "./teeth-for-tests.ts";

const handOf = (twoDigit: keyof typeof usualRoots) => ({
  tooth: firstMolars[twoDigit],
  roots: usualRoots[twoDigit],
  at: { root: 0, level: 0 },
});

describe("the keys of the roots", () => {
  it("stand once each, and beside those of the case: undo, history, documents, add, over time, neighbours", () => {
    const own = [...rootActs, ...countActs].map(({ keys }) => keys);
    expect(new Set(own).size).toBe(own.length);
    const others = ["h", "d", "a", "t", "[", "]", "?", "Control+z", "n", "u", "Backspace"];
    expect(own.filter((keys) => others.includes(keys))).toEqual([]);
  });

  it("do what they say on the usual form of a tooth", () => {
    const done = (keys: string, tooth: keyof typeof usualRoots = "46") => {
      const step = [...rootActs, ...countActs].find((one) => one.keys === keys)?.step(handOf(tooth));
      return step === undefined ? undefined : "cannot" in step ? step.cannot : step.says;
    };
    expect(["s", "j", "c", "l", "r", "b", "3"].map((keys) => done(keys))).toEqual([
      "M split into 3 from orifice to foramen",
      "M joined to 1 from orifice to foramen",
      "M C1 from orifice to foramen",
      "a level added to M at the foramen",
      "root DL added",
      "root M lies buccal",
      "3 canals in M from orifice to foramen",
    ]);
    expect(done("Delete")).toContain("has one level");
    expect(done("Shift+Delete")).toBe("root M taken away");
    // The mesiobuccal root is recorded as buccal, so that the palatal side is next.
    expect(done("b", "26")).toBe("root MB lies palatal");
  });

  it("call the inner side palatal above and lingual below", () => {
    expect(sideName(handOf("26"), "lingual")).toBe("palatal");
    expect(sideName(handOf("46"), "lingual")).toBe("lingual");
    expect(sideName(handOf("46"), undefined)).toBe("in line");
  });
});
