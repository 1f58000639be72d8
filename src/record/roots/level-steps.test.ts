import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canalFaults } from "../../core/tooth/canal-faults.ts";
import { type CanalLevel, type CanalRoot, canalNames, canalRootSchema } from "../../core/tooth/canal-root.ts";
import { teeth } from "../../core/tooth/teeth.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { addLevel, countHere, joinHere, nextShape, shapeHere, splitHere, takeLevel } from "./level-steps.ts";
import { levelInWords, placeWithin, type RootStep, type RootsInHand } from "./root-step.ts";
import { addRoot, takeRoot } from "./root-steps.ts";
import { done, hand, why } from "./root-steps-for-tests.ts";

const oneRoot = (levels: readonly CanalLevel[], level = 0, orifices?: string[]): RootsInHand =>
  hand("31", [{ name: "R", levels: [...levels], ...(orifices && { orifices }) }], 0, level);
const levelsOf = (step: RootStep, root = 0) => done(step).roots[root]?.levels;
const namesOf = (step: RootStep, root = 0) => {
  const found = done(step).roots[root];
  return found === undefined ? [] : canalNames(found);
};

describe("a level", () => {
  it("splits and joins at the place that is chosen, and says so", () => {
    expect(done(splitHere(oneRoot([1, 1, 1], 1)))).toMatchObject({
      roots: [{ levels: [1, 2, 1] }],
      at: { root: 0, level: 1 },
      says: "R split into 2 in the middle third",
    });
    expect(done(joinHere(oneRoot([2, 2], 1))).says).toBe("R joined to 1 at the foramen");
    expect(levelsOf(joinHere(oneRoot([2, 2], 1)))).toEqual([2, 1]);
  });

  it("takes a number of canals at once", () => {
    expect(done(countHere(oneRoot([1, 1], 1), 3))).toMatchObject({ roots: [{ levels: [1, 3] }] });
    expect(done(countHere(oneRoot([1, 1], 1), 3)).says).toBe("3 canals in R at the foramen");
    expect(why(countHere(oneRoot([1, 1], 1), 1))).toContain("already");
    expect(why(countHere(oneRoot([1, 1], 1), 7))).toContain("can't hold 7 canals");
    expect(why(countHere(oneRoot([1, 1], 1), 0))).toContain("can't hold no lumen");
  });

  it("is added behind the chosen one, like it, and then chosen", () => {
    expect(done(addLevel(oneRoot([2, 1], 0)))).toMatchObject({
      roots: [{ levels: [2, 2, 1] }],
      at: { level: 1 },
      says: "a level added to R in the middle third",
    });
  });

  it("is taken away; the names follow the new orifice", () => {
    expect(done(takeLevel(oneRoot([1, 2, 1], 1)))).toMatchObject({
      roots: [{ levels: [1, 1] }],
      at: { level: 1 },
      says: "the level of R in the middle third taken away",
    });
    expect(namesOf(takeLevel(oneRoot([2, 1], 0, ["B", "L"])))).toEqual(["Single"]);
    expect(done(takeLevel(oneRoot([1, 2], 1))).at).toEqual({ root: 0, level: 0 });
  });

  it("refuses with a word what the record can't hold", () => {
    expect(why(splitHere(oneRoot([6])))).toBe("R has 6 canals from orifice to foramen; more can't be recorded there");
    expect(why(joinHere(oneRoot([1, 1], 1)))).toBe("R has one canal at the foramen; there is nothing to join");
    expect(why(addLevel(oneRoot(Array.from({ length: 12 }, () => 1))))).toContain("12 levels");
    expect(why(takeLevel(oneRoot([1])))).toContain("has one level");
    expect(why(takeLevel(oneRoot([1, { canals: 0, cShape: "C5" }])))).toContain("C5");
  });

  it.each([
    [0, 1, "from orifice to foramen"],
    [0, 4, "at the orifice"],
    [1, 4, "in the coronal third"],
    [2, 4, "in the apical third"],
    [2, 5, "in the middle third"],
    [3, 4, "at the foramen"],
  ])("%i of %i lies %s", (level, levels, words) => {
    expect(levelInWords(level, levels)).toBe(words);
  });
});

describe("a C-shaped level", () => {
  // The numbers of canals that each form can hold: Fan 2004 (memory), data/fan-2004.
  it.each([
    ["C1", 1, "C2", 2],
    ["C2", 2, "C3", 3],
    ["C4", 1, "C3", 2],
    ["C3", 2, "C3", 3],
  ] as const)("%s with %i splits into %s with %i", (from, canals, to, split) => {
    expect(levelsOf(splitHere(oneRoot([1, { canals, cShape: from }], 1)))).toEqual([1, { canals: split, cShape: to }]);
  });

  it("joins to a form that holds one, and opens again from C5", () => {
    expect(levelsOf(joinHere(oneRoot([{ canals: 2, cShape: "C3" }])))).toEqual([{ canals: 1, cShape: "C1" }]);
    expect(levelsOf(splitHere(oneRoot([1, { canals: 0, cShape: "C5" }], 1)))?.[1]).toEqual({
      canals: 1,
      cShape: "C4",
    });
  });

  it("can't hold more than three", () => {
    expect(why(splitHere(oneRoot([{ canals: 3, cShape: "C3" }])))).toContain("more can't be recorded");
    expect(why(countHere(oneRoot([{ canals: 3, cShape: "C3" }]), 4))).toContain("C3 can't hold 4 canals");
  });

  it("takes each form in turn with the canals that it holds; never C5 at the orifice", () => {
    const formsFrom = (start: RootsInHand): (string | undefined)[] => {
      const forms: (string | undefined)[] = [];
      let now = start;
      do {
        const step = done(shapeHere(now, nextShape(now)));
        now = { ...now, roots: step.roots };
        forms.push(nextShape(now));
      } while (forms.length < 8 && nextShape(now) !== "C1");
      return forms;
    };
    expect(formsFrom(oneRoot([1, 1], 0))).toEqual(["C2", "C3", "C4", undefined, "C1"]);
    expect(formsFrom(oneRoot([1, 1], 1))).toEqual(["C2", "C3", "C4", "C5", undefined, "C1"]);
    expect(levelsOf(shapeHere(oneRoot([3]), "C1"))).toEqual([{ canals: 1, cShape: "C1" }]);
    expect(levelsOf(shapeHere(oneRoot([1, { canals: 0, cShape: "C5" }], 1), undefined))).toEqual([1, 1]);
    expect(why(shapeHere(oneRoot([1]), "C5"))).toContain("can't be the level of the orifice");
  });
});

describe("the names of canals", () => {
  const lowerM: CanalRoot = { name: "M", levels: [2], orifices: ["MB", "ML"] };
  it.each([
    ["a distal root below", "46", { name: "D", levels: [1] }, ["DB", "DL"]],
    ["a mesial root below", "46", lowerM, ["MB", "MM", "ML"]],
    ["a mesiobuccal root above", "26", { name: "MB", levels: [1] }, ["MB1", "MB2"]],
    ["a third above", "26", { name: "MB", levels: [2], orifices: ["MB1", "MB2"] }, ["MB1", "MB2", "MB3"]],
    ["names of one's own", "46", { name: "M", levels: [2], orifices: ["A", "B"] }, ["A", "B", "M1"]],
  ] as const)("of %s grow as the trade calls them", (_, tooth, root, names) => {
    const roots = [{ name: "Q", levels: [1] }, root as CanalRoot];
    expect(namesOf(splitHere(hand(tooth, roots, 1)), 1)).toEqual(names);
  });

  it("of a lone root are those of the tooth", () => {
    expect(namesOf(splitHere(oneRoot([1], 0, ["Single"])))).toEqual(["B", "L"]);
    expect(namesOf(splitHere(hand("15", usualRoots("15").roots)))).toEqual(["B", "P"]);
  });

  it("never repeat one of another root", () => {
    const roots: CanalRoot[] = [lowerM, { name: "D", levels: [1] }, { name: "DL", levels: [1] }];
    expect(namesOf(splitHere(hand("46", roots, 1)), 1)).toEqual(["D1", "D2"]);
  });
});

const plainLevel = fc.integer({ min: 1, max: 6 });
const anyTooth = fc.constantFrom(...teeth);
const nameOfRoot = fc.constantFrom("MB", "DB", "P", "M", "D", "DL", "L", "B", "R", "X", "Palatals");
const anyRoots = fc.uniqueArray(
  fc.record({ name: nameOfRoot, levels: fc.array(plainLevel, { minLength: 1, maxLength: 12 }) }),
  { minLength: 1, maxLength: 6, selector: ({ name }) => name },
);

describe("steps", () => {
  it("that split and then join leave levels and names as they were", () => {
    fc.assert(
      fc.property(anyTooth, anyRoots, fc.nat(), fc.nat(), (tooth, roots, root, level) => {
        const at = placeWithin(roots, { root: root % roots.length, level: level % 12 });
        const split = splitHere({ tooth, roots, at });
        fc.pre(!("cannot" in split) && canalFaults(tooth, roots).length === 0);
        const back = done(joinHere({ tooth, roots: done(split).roots, at }));
        const told = (list: readonly CanalRoot[]) => list.map((one) => [one.levels, canalNames(one)]);
        // A lone root R is called Single by its canal, whatever it was called before.
        fc.pre(!(roots.length === 1 && roots[0]?.name === "R" && roots[0].levels[0] === 1));
        expect(told(back.roots)).toEqual(told(roots));
      }),
    );
  });

  it("in any order never make roots that the record or the sum refuses", () => {
    const acts: readonly ((now: RootsInHand) => RootStep)[] = [
      splitHere,
      joinHere,
      addLevel,
      takeLevel,
      (now) => shapeHere(now, nextShape(now)),
      addRoot,
      takeRoot,
      ...[1, 2, 3, 6].map((count) => (now: RootsInHand) => countHere(now, count)),
    ];
    const turn = fc.record({ act: fc.nat({ max: acts.length - 1 }), root: fc.nat(5), level: fc.nat(11) });
    fc.assert(
      fc.property(anyTooth, fc.array(turn, { maxLength: 40 }), (tooth, turns) => {
        let roots = usualRoots(tooth.twoDigit).roots;
        for (const { act, root, level } of turns) {
          const step = acts[act]?.({ tooth, roots, at: placeWithin(roots, { root, level }) });
          if (step === undefined) continue;
          if ("cannot" in step) expect(step.cannot).not.toBe("");
          else {
            expect(step.at).toEqual(placeWithin(step.roots, step.at));
            roots = step.roots;
          }
          expect(roots.length).toBeGreaterThan(0);
          expect(roots.length).toBeLessThanOrEqual(6);
          for (const one of roots) expect(canalRootSchema.safeParse(one).error?.message).toBeUndefined();
          expect(canalFaults(tooth, roots)).toEqual([]);
        }
      }),
    );
  });
});
