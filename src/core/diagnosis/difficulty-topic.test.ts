import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import dijkstra from "../../../data/dijkstra-2006/source.json" with { type: "json" };
import estrela from "../../../data/estrela-2008/source.json" with { type: "json" };
import pruett from "../../../data/pruett-1997/source.json" with { type: "json" };
import schafer from "../../../data/schafer-2002/source.json" with { type: "json" };
import tzanetakis from "../../../data/tzanetakis-2008/source.json" with { type: "json" };
import { Refusal } from "../refusal.ts";
import { answer } from "../topic.ts";
import type { DifficultyInput } from "./difficulty/difficulty-input.ts";
import { difficultyGroups, difficultyTable } from "./difficulty/difficulty-table.ts";
import { difficultyTopic } from "./difficulty-topic.ts";

const of = (input: DifficultyInput) => answer(difficultyTopic, input);
const idsOf = (facts: readonly { id: string }[]) => facts.map(({ id }) => id);

function refusalOf(input: unknown): Refusal {
  try {
    answer(difficultyTopic, input);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error("not refused");
}
const faultsOf = (input: unknown) => refusalOf(input).faults.map(({ path, says }) => `${path}: ${says}`);
const level = 0.95;

/** A tooth of which everything is known, and everything is hard. */
const hard: DifficultyInput = {
  tooth: "26",
  canals: [{ name: "MB1", deflectionDeg: 48, radiusMm: 3.2, lengthMm: 26.5, sCurve: true, narrowed: true }],
  ...{ extraRoot: "radix entomolaris", extraCanal: "5 canals, 4 are usual", calcified: true, post: true, gag: true },
  earlierFilling: { present: true, endMm: 4.5, density: "dense" },
  fragments: [{ canal: "MB1", third: "apical", beyondBend: true }],
  alteredCourses: [{ is: "ledge", canal: "MB1" }],
  ...{ perforation: true, openApex: true, resorption: "both", rotationDeg: 30, tiltDeg: 20, mouthOpeningMm: 28 },
  physicalStatusClass: 4,
};
/** The same tooth with nothing hard about it. */
const plain: DifficultyInput = {
  tooth: "26",
  canals: [{ name: "MB1", deflectionDeg: 12, radiusMm: 14, lengthMm: 20, sCurve: false, narrowed: false }],
  ...{ extraRoot: "none", extraCanal: "none", calcified: false, post: false, gag: false },
  earlierFilling: { present: false },
  ...{ fragments: [], alteredCourses: [], perforation: false, openApex: false, resorption: "none" },
  ...{ rotationDeg: 0, tiltDeg: 5, mouthOpeningMm: 45, physicalStatusClass: 1 },
};

describe("the table of facts", () => {
  it("stands in the order reach, shape, seal, keep, each fact once", () => {
    const places = difficultyTable.map(({ group }) => difficultyGroups.indexOf(group));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(idsOf(difficultyTable)).size).toBe(difficultyTable.length);
  });

  it("holds the values of its sources: 35 mm, 30 degrees and 5 mm, 35 degrees, 4 mm, 5 of 5, 5 of 11, 9 of 24", () => {
    const row = (id: string) => difficultyTable.find((one) => one.id === id);
    expect(row("mouthOpening")?.value).toBe(dijkstra.limitedToMm);
    expect([row("deflection")?.value, row("radius")?.value]).toEqual([
      pruett.life.fellAboveDeg,
      pruett.life.fellBelowMm,
    ]);
    expect(row("deflection")?.others?.[0]?.value).toBe(schafer.classes.at(-1)?.fromDeg);
    expect(row("radius")?.others?.[0]?.value).toBe(estrela.classesMm.find(({ name }) => name === "severe")?.to);
    for (const { events, n } of Object.values(tzanetakis.byThird))
      expect(row("fragment")?.because).toContain(`${events} of ${n}`);
    // Tzanetakis et al. 2008, J Endod 34:675-678 (seen): 100, 45.4 and 37.5 %, the second cut and not rounded.
    const shares = Object.values(tzanetakis.byThird).map(({ events, n }) => events / n);
    [1, 0.454, 0.375].forEach((share, at) => {
      expect(Math.abs((shares[at] ?? 0) - share)).toBeLessThan(0.0006);
    });
  });

  it("is shown whole by the method page, row by row", () => {
    const page = readFileSync(new URL("../../../docs/methods/difficulty.md", import.meta.url), "utf8");
    const shown = page.split("\n").filter((line) => /^\| `\w+` \| (reach|shape|seal|keep) \|/.test(line));
    expect(
      shown.map((line) =>
        line
          .split("|")
          .map((cell) => cell.trim())
          .slice(1, -1),
      ),
    ).toEqual(
      difficultyTable.map((row) => {
        const limit =
          row.value === undefined ? row.is : `${row.is} ${row.value}${row.unit === "mm" ? " mm" : (row.unit ?? "")}`;
        const source = row.source === "common practice" ? row.source : `\`${row.source}\``;
        return [`\`${row.id}\``, row.group, limit.replace("atLeast", "at least"), row.because, source, row.mark];
      }),
    );
  });
});

describe("difficulty", () => {
  it("shows every row of the table for a tooth with everything, in its order, with nothing asked", () => {
    const { facts, within, asked } = of(hard);
    expect(idsOf(facts)).toEqual(idsOf(difficultyTable).filter((id) => id !== "fillingBeyond"));
    expect(idsOf(within)).toEqual(["fillingBeyond"]);
    expect(asked).toEqual([]);
    const groups = facts.map(({ group }) => difficultyGroups.indexOf(group));
    expect(groups).toEqual([...groups].sort((a, b) => a - b));
  });

  it("shows none for a plain one, each where it lies, and asks nothing", () => {
    const { facts, within, asked, cautions } = of(plain);
    expect([facts, asked, cautions]).toEqual([[], [], []]);
    expect(idsOf(within)).toEqual(
      idsOf(difficultyTable).filter((id) => !["fillingShort", "fillingDense", "fillingBeyond"].includes(id)),
    );
  });

  it("says nothing of what was not recorded, and asks for it: missing is not easy", () => {
    const { facts, within, asked, cautions } = of({});
    expect([facts, within]).toEqual([[], []]);
    const rows = difficultyTable.filter(({ ask, id }) => ask !== undefined && id !== "fillingShort");
    expect(asked).toEqual(rows.map(({ id, group, ask }) => ({ id, group, says: ask })));
    expect(cautions).toEqual([`${asked.length} facts were not recorded: none of them counts as easy`]);
  });

  it("has no total and no grade", () => {
    expect(Object.keys(of(hard)).sort()).toEqual(["asked", "basis", "cautions", "facts", "notComputed", "within"]);
  });

  // By hand, from the values above.
  it.each([
    ["mouthOpening", "The mouth opens 28.0 mm; 7.0 mm below 35.0 mm", "below", 7],
    ["physicalStatus", "Physical status class 4; 1 above 3", "above", 1],
    ["rotation", "The tooth is rotated by 30°; 15° above 15°", "above", 15],
    ["deflection", "MB1 turns by 48°; 18° above 30°", "above", 18],
    ["radius", "The largest bend of MB1 has a radius of 3.2 mm; 1.8 mm below 5.0 mm", "below", 1.8],
    ["length", "MB1 is 26.5 mm long; 1.5 mm above 25.0 mm", "above", 1.5],
    ["fillingShort", "The earlier filling ends 4.5 mm short of the apex; 2.5 mm above 2.0 mm", "above", 2.5],
    ["extraRoot", "There is an extra root: radix entomolaris", "present", undefined],
    ["fragment", "An instrument lies in MB1: apical third, in or beyond a bend", "present", undefined],
    ["alteredCourse", "MB1: ledge", "present", undefined],
    ["openApex", "The apex is open", "present", undefined],
  ])("says of %s: %s", (id, says, lies, by) => {
    const fact = of(hard).facts.find((one) => one.id === id);
    expect(fact?.says).toBe(says);
    expect(fact?.lies).toBe(lies);
    if (by === undefined) expect(fact).not.toHaveProperty("by");
    else expect(fact?.by).toBeCloseTo(by, 9);
  });

  it("writes a digit more where the difference would vanish", () => {
    const said = (canal: object) => of({ canals: [{ name: "P", ...canal }] }).facts[0]?.says;
    expect(said({ deflectionDeg: 30.4 })).toBe("P turns by 30.4°; 0.4° above 30°");
    expect(said({ lengthMm: 25.04 })).toBe("P is 25.04 mm long; 0.04 mm above 25.0 mm");
  });

  it("names the source of each threshold, and other published ones beside it", () => {
    const fact = of(hard).facts.find(({ id }) => id === "radius");
    expect(fact?.threshold).toEqual({ value: 5, source: "pruett-1997", mark: "seen", is: "below" });
    expect(fact?.otherThresholds).toEqual([
      { value: 4, source: "estrela-2008", mark: "memory", says: "called severe to this", lies: "below" },
    ]);
    expect(of(hard).basis.sources).toEqual([
      ...["dijkstra-2006", "pruett-1997", "schafer-2002", "estrela-2008", "pess-2020"],
      ...["gorni-gagliani-2004", "tzanetakis-2008", "farzaneh-2004"],
    ]);
    expect(of({ gag: true }).basis.sources).toEqual([]);
  });

  // The threshold itself is on the side that its row says.
  it.each([
    [{ mouthOpeningMm: 35 }, false],
    [{ mouthOpeningMm: 34.9 }, true],
    [{ physicalStatusClass: 2 }, false],
    [{ physicalStatusClass: 3 }, true],
    [{ rotationDeg: 15 }, false],
    [{ tiltDeg: 15.1 }, true],
    [{ canals: [{ name: "P", lengthMm: 25 }] }, false],
    [{ canals: [{ name: "P", lengthMm: 25.1 }] }, true],
    [{ canals: [{ name: "P", deflectionDeg: 30 }] }, false],
    [{ canals: [{ name: "P", radiusMm: 5 }] }, false],
    [{ earlierFilling: { present: true, endMm: 2 } }, false],
  ] as const)("%j: harder is %j", (input, harder) => {
    const found = of(input as DifficultyInput);
    const measured = ({ value }: { value: unknown }) => typeof value === "number";
    expect(found.facts.some(measured)).toBe(harder);
    expect(found.within.some(measured)).toBe(!harder);
  });

  it("an end of the filling beyond the apex is a matter of the seal, by how much, and not short", () => {
    const found = of({ earlierFilling: { present: true, endMm: -1.5 } });
    expect(found.facts.map(({ says }) => says)).toEqual([
      "There is an earlier filling",
      "The earlier filling reaches 1.5 mm beyond the apex",
    ]);
    expect(idsOf(found.asked)).not.toContain("fillingShort");
    const told = of({ earlierFilling: { present: true, beyond: true, density: "voids" } });
    expect(told.facts.at(-1)).toMatchObject({
      says: "The earlier filling reaches beyond the apex",
      value: true,
      lies: "present",
    });
    expect(told.within).toMatchObject([{ id: "fillingDense", says: "The earlier filling has voids", lies: "absent" }]);
    const unknown = of({ earlierFilling: { present: true, beyond: false } });
    expect(idsOf(unknown.asked)).toContain("fillingShort");
  });

  it("what earlier treatment leaves is asked unless there was none; a narrowed canal answers for the tooth", () => {
    const ask = (input: DifficultyInput) => idsOf(of(input).asked);
    const left = ["alteredCourse", "fragment", "perforation"];
    expect(ask({})).toEqual(expect.arrayContaining(left));
    expect(ask({ earlierFilling: { present: false } }).filter((id) => left.includes(id))).toEqual([]);
    expect(ask({ canals: [{ name: "P", narrowed: false }] })).not.toContain("calcified");
  });

  it("a bend of one film is at least what it shows: never called below, a second film is asked for", () => {
    const seen = (deflectionDeg: number) =>
      of({ canals: [{ name: "MB1", deflectionDeg, radiusMm: 9, fromOneFilm: true }] });
    expect(seen(38).facts[0]).toMatchObject({
      says: "MB1 turns by at least 38° on one film; 8° above 30°",
      atLeast: true,
    });
    expect(seen(20).within[0]).toMatchObject({
      says: "MB1 turns by at least 20° on one film; 10° below 30°: the true bend may lie above",
      atLeast: true,
    });
    expect(seen(20).within[1]?.says).toBe(
      "The largest bend of MB1 has a radius of 9.0 mm on one film; 4.0 mm above 5.0 mm",
    );
    expect(seen(20).cautions.join()).toContain("may be larger: MB1");
    expect(seen(20).asked).toContainEqual({
      ...{ id: "deflection", group: "shape", canal: "MB1" },
      says: "a second film at another angle, read together with the first: the bend of MB1 is known from one alone",
    });
    const inSpace = of({ canals: [{ name: "MB1", deflectionDeg: 20, fromOneFilm: false }] });
    expect(inSpace.within[0]).not.toHaveProperty("atLeast");
    expect(idsOf(inSpace.asked)).not.toContain("deflection");
  });

  it("an interval across the threshold is not sure, and that is cautioned", () => {
    const with2 = (low: number, high: number) =>
      of({ canals: [{ name: "MB1", deflectionDeg: 33, deflectionInterval: { low, high, level } }] });
    expect(with2(31, 36).facts[0]?.sure).toBe(true);
    expect(with2(28, 38).facts[0]?.sure).toBe(false);
    expect(with2(28, 38).cautions.join()).toContain("the interval reaches across 30");
    expect(with2(31, 36).cautions.join()).not.toContain("reaches across");
    expect(of({ canals: [{ name: "MB1", deflectionDeg: 33 }] }).facts[0]).not.toHaveProperty("sure");
  });

  it("asks of each canal by name what is not known of it", () => {
    const { asked } = of({
      canals: [
        { name: "MB1", deflectionDeg: 10 },
        { name: "P", lengthMm: 20 },
      ],
    });
    const canals = asked.filter(({ canal }) => canal !== undefined).map(({ id, canal }) => `${id} ${canal}`);
    expect(canals).toEqual([
      ...["deflection P", "radius MB1", "radius P", "doubleBend MB1", "doubleBend P", "length MB1"],
    ]);
  });
});

describe("difficulty: properties", () => {
  it("each fact stands by itself: the facts of two sheets put together are the facts of both", () => {
    const keys = Object.keys(hard).filter((key) => key !== "tooth") as (keyof DifficultyInput)[];
    const from = (source: DifficultyInput, some: readonly string[]): DifficultyInput =>
      Object.fromEntries(Object.entries(source).filter(([key]) => some.includes(key)));
    fc.assert(
      fc.property(fc.subarray(keys), fc.boolean(), (some, isHard) => {
        const rest = keys.filter((key) => !some.includes(key));
        const [one, other] = [from(isHard ? hard : plain, some), from(hard, rest)];
        const both = of({ ...one, ...other });
        const apart = [...idsOf(of(one).facts), ...idsOf(of(other).facts)];
        expect([...idsOf(both.facts)].sort()).toEqual(apart.sort());
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  it("another order of canals gives the same facts", () => {
    const canals = [hard.canals?.[0], plain.canals?.[0]].flatMap((canal, at) =>
      canal ? [{ ...canal, name: `C${at}` }] : [],
    );
    const says = (some: typeof canals) =>
      of({ canals: some })
        .facts.map((fact) => fact.says)
        .sort();
    expect(says([...canals].reverse())).toEqual(says(canals));
  });

  it("more bend is never less hard", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 170, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (angle, more) => {
          const count = (deflectionDeg: number) => of({ canals: [{ name: "P", deflectionDeg }] }).facts.length;
          expect(count(angle + more)).toBeGreaterThanOrEqual(count(angle));
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });
});

describe("difficulty refuses", () => {
  it("an unknown tooth", () => {
    expect(refusalOf({ tooth: "96" }).code).toBe("tooth.unknown");
    expect(faultsOf({ tooth: "96" })[0]).toContain("tooth: ");
  });

  it("contradictions, every one with its path", () => {
    const interval = { low: 10, high: 20, level };
    const found = refusalOf({
      canals: [
        { name: "MB1", deflectionDeg: 33, deflectionInterval: interval },
        { name: "MB1", lengthInterval: interval, radiusMm: 3, radiusInterval: interval },
      ],
      earlierFilling: { present: false, endMm: 3, density: "dense", beyond: true },
    });
    expect(found.code).toBe("input.impossible");
    expect(found.faults.map(({ path }) => path)).toEqual([
      ...["canals[1].name", "canals[0].deflectionInterval", "canals[1].radiusInterval", "canals[1].lengthInterval"],
      ...["earlierFilling.endMm", "earlierFilling.density", "earlierFilling.beyond"],
    ]);
    expect(faultsOf({ earlierFilling: { present: true, endMm: 2, beyond: true } })).toEqual([
      "earlierFilling.beyond: true contradicts an end 2 mm short of the apex",
    ]);
    expect(faultsOf({ earlierFilling: { present: true, endMm: -2, beyond: false } })).toEqual([
      "earlierFilling.beyond: false contradicts an end 2 mm beyond the apex",
    ]);
    expect(of({ earlierFilling: { present: true, endMm: -2, beyond: true } }).facts).toHaveLength(2);
  });

  it.each([
    [{ mouthOpeningMm: 81 }, "mouthOpeningMm"],
    [{ rotationDeg: -1 }, "rotationDeg"],
    [{ tiltDeg: 91 }, "tiltDeg"],
    [{ physicalStatusClass: 6 }, "physicalStatusClass"],
    [{ resorption: "some" }, "resorption"],
    [{ canals: [{ name: "mb1" }] }, "canals[0].name"],
    [{ canals: [{ name: "P", deflectionDeg: 181 }] }, "canals[0].deflectionDeg"],
    [{ canals: [{ name: "P", radiusMm: 0 }] }, "canals[0].radiusMm"],
    [{ canals: [{ name: "P", lengthMm: 61 }] }, "canals[0].lengthMm"],
    [{ fragments: [{ third: "top" }] }, "fragments[0].third"],
    [{ alteredCourses: [{ is: "dent" }] }, "alteredCourses[0].is"],
  ])("%j", (input, path) => {
    expect(faultsOf(input)[0]).toContain(`${path}: `);
  });
});
