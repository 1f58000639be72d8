import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { part } from "../../../test/sample-case.ts";
import type { BodyOf } from "../../record/parts.ts";
import { irrigationsTold, irrigationTold } from "../irrigation-told.ts";
import { entryOf, history, visitEntries, visitParts } from "../visit-sums/visit-for-tests.ts";

type Row = BodyOf<"visit">["irrigation"][number];
const subject = "irrigation of visit-1";
const row = (solution: Row["solution"], more: Partial<Row> = {}): Row => ({
  ...{ solution, volumeMl: 5, minutes: 5, activated: "no" },
  ...more,
});
const hypochlorite = row("sodium hypochlorite", { percent: 3 });
const chlorhexidine = row("chlorhexidine", { percent: 2 });
const testedTooth: BodyOf<"findings">["teeth"][number] = {
  ...{ tooth: "26", role: "tooth", cold: { reply: "notDone" }, heat: { reply: "notDone" }, electric: "notDone" },
  ...{ percussion: "notDone", palpation: "notDone", bite: "notDone", mobility: "notDone", probingMm: {} },
};
const told = (irrigation: readonly Row[], canal?: string) =>
  irrigationTold(visitEntries(visitParts({ irrigation: [...irrigation] })), "visit-1", canal);

describe("the irrigation of a visit", () => {
  it("is asked where irrigants are recorded", () => {
    expect(visitEntries(visitParts({}))).toEqual([]);
    expect(visitEntries(visitParts({ irrigation: [hypochlorite] })).map((one) => one.subject)).toEqual([subject]);
  });

  it("tells two that met, and not where a rinse lay between (basrani-2007)", () => {
    expect(told([hypochlorite, chlorhexidine])?.output?.clashes).toMatchObject([
      { first: "sodium hypochlorite", second: "chlorhexidine", steps: [0, 1] },
    ]);
    expect(told([hypochlorite, row("sterile water"), chlorhexidine])?.output?.clashes).toEqual([]);
  });

  it("goes by the minutes where every row has one, else by the rows, and keeps each row's place", () => {
    const timed = [
      { ...chlorhexidine, atMin: 30 },
      { ...row("sterile water"), atMin: 20 },
      { ...hypochlorite, atMin: 10 },
    ];
    const { input, inputPaths } = entryOf(visitParts({ irrigation: timed }), subject);
    expect(input).toMatchObject({
      sequence: [{ solution: "sodium hypochlorite" }, { solution: "sterile water" }, { solution: "chlorhexidine" }],
    });
    expect(inputPaths.map(({ record }) => record).slice(0, 3)).toEqual(
      [2, 1, 0].map((index) => `visit-1/irrigation/${index}`),
    );
    const [first, ...others] = timed;
    if (first === undefined) throw new Error("there is a first row");
    const { atMin: _at, ...untimed } = first;
    expect(entryOf(visitParts({ irrigation: [untimed, ...others] }), subject).input).toMatchObject({
      sequence: [{ solution: "chlorhexidine" }, { solution: "sterile water" }, { solution: "sodium hypochlorite" }],
    });
  });

  it("goes canal by canal where rows name canals: what was in all of them is in each", () => {
    const inMb1 = (one: Row): Row => ({ ...one, canal: "MB1" });
    const entries = visitEntries(
      visitParts({ irrigation: [hypochlorite, inMb1(row("sterile water")), chlorhexidine], canals: [] }),
    );
    // MB1 was rinsed between; the canals that no row names were not.
    expect(irrigationsTold(entries, "visit-1").map(({ canal, output }) => [canal, output?.clashes.length])).toEqual([
      [undefined, 1],
      ["MB1", 0],
    ]);
  });

  it("has no further canals where the visit's canals are all named", () => {
    // The sample's visit works on MB1 alone.
    const irrigation = [hypochlorite, { ...row("sterile water"), canal: "MB1" }, chlorhexidine];
    expect(visitEntries(visitParts({ irrigation })).map((one) => one.subject)).toEqual([`${subject} MB1`]);
  });

  it("adds up each solution, in whatever order (property)", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(1, 2.5, 10), { minLength: 1, maxLength: 8 }), (volumes) => {
        const rows = volumes.map((volumeMl) => ({ ...hypochlorite, volumeMl }));
        const all = volumes.reduce((sum, one) => sum + one, 0);
        expect(told(rows)?.output?.totals).toMatchObject([{ volumeMl: all, minutes: 5 * volumes.length }]);
        expect(told(rows.toReversed())?.output?.totals).toEqual(told(rows)?.output?.totals);
      }),
      { numRuns: 15 },
    );
  });

  it("knows of the root what the record told up to that day, and of an allergy to iodine", () => {
    const notAsked = "notAsked" as const;
    const sheet = (takenOn: string) =>
      part("findings", "findings-1", {
        ...{ takenOn, note: "", teeth: [testedTooth] },
        history: {
          ...{ spontaneousPain: notAsked, painToCold: notAsked, painToHeat: notAsked, relievedByCold: notAsked },
          ...{ painOnBiting: notAsked, trauma: notAsked, recentOnset: notAsked },
        },
        seen: {
          ...{ swelling: "none", sinusTract: "none", caries: "none", crack: "none", restoration: "" },
          fever: notAsked,
        },
        onFilm: {
          ...{ ligament: "notDone", lamina: "notDone", lucency: "notDone", sclerosis: notAsked, calcified: notAsked },
          ...{ apex: "open", resorption: "internal", earlierFilling: "notDone" },
        },
      });
    const perforation = (canal?: string) =>
      part("mishap", "mishap-1", {
        ...{ on: "2024-03-04", what: "perforation", third: "notRecorded", bend: "notRecorded", handled: "open" },
        ...{ toldPatient: "told", story: "", ...(canal === undefined ? {} : { canal }) },
      });
    const used = (...more: Parameters<typeof visitParts>[1][]) =>
      entryOf(visitParts({ irrigation: [hypochlorite] }, ...more), subject);
    expect(used().input).not.toHaveProperty("root");
    expect(used(sheet("2024-03-05")).input).not.toHaveProperty("root");
    const { input, inputPaths } = used(sheet("2024-03-01"), perforation("DB"));
    expect(input).toMatchObject({ root: { openApex: true, resorption: true, perforation: true } });
    expect(inputPaths).toContainEqual({ input: "root.openApex", record: "findings-1/onFilm/apex" });
    expect(inputPaths).toContainEqual({ input: "root.perforation", record: "mishap-1/what" });
    const inMb1 = { irrigation: [{ ...hypochlorite, canal: "MB1" }] };
    expect(entryOf(visitParts(inMb1, perforation("DB")), `${subject} MB1`).input).not.toHaveProperty("root");
    expect(entryOf(visitParts(inMb1, perforation("MB1")), `${subject} MB1`).input).toHaveProperty(
      "root.perforation",
      true,
    );
    expect(used(history("history-1", "2024-01-01", { flags: [{ flag: "allergyIodine" }] })).input).toMatchObject({
      iodineAllergy: true,
    });
  });

  it("is held to the clinic's protocol, of another solution as well", () => {
    const protocol = [
      { solution: "Sodium hypochlorite", minutesAtLeast: 30 },
      { solution: "a mixture of our own", volumeMlAtLeast: 2 },
    ];
    const { output } = entryOf(
      visitParts({
        irrigation: [hypochlorite, row("other", { named: "a mixture of our own", volumeMl: 3 })],
        clinic: { irrigation: { protocol, openEndedMm: 4 } },
      }),
      subject,
    );
    expect(output).toMatchObject({
      protocol: [
        { solution: "sodium hypochlorite", wanted: 30, found: 5, stands: "below", met: false },
        { solution: "a mixture of our own", wanted: 2, found: 3, stands: "above", met: true },
      ],
      settings: { openEndedMm: { value: 4, from: "input" } },
    });
  });

  it("does not know what a solution without a name must not meet, and says so", () => {
    const { output } = entryOf(visitParts({ irrigation: [row("other"), hypochlorite] }), subject);
    expect(output).toMatchObject({
      notComputed: expect.arrayContaining([
        { name: "clashes of a solution without a name", why: "what it must not meet is not known here" },
      ]),
    });
  });
});

describe("irrigants that can't be", () => {
  it("a share in place of a percent is refused at its row", () => {
    const { refused, inputPaths } = entryOf(
      visitParts({ irrigation: [row("saline", { percent: 0.9 }), { ...hypochlorite, percent: 0.0525 }] }),
      subject,
    );
    expect(refused).toEqual([expect.stringMatching(/^sequence\[1\]\.percent: 0\.0525 .*5\.25 % is written 5\.25/)]);
    expect(inputPaths).toContainEqual({ input: "sequence[1]", record: "visit-1/irrigation/1" });
  });

  it("less than nothing does not reach the record", () => {
    expect(() => visitParts({ irrigation: [{ ...hypochlorite, volumeMl: -1 }] })).toThrow();
  });
});
