import { describe, expect, it } from "vitest";
import {
  entryOf,
  lidocaine,
  surgery,
  visitEntries,
  visitParts,
} from "../../../../ledger/visit-sums/visit-for-tests.ts";
import type { Part } from "../../../../record/parts.ts";
import { entrySubject, entryTitle, inputOrigin } from "./entry-subject.ts";
import { faultsAtPlaces } from "./faults-at-places.ts";
import { ledgerLines, speaksFor } from "./ledger-lines.ts";

/** An answer as the panel reads it, with plain blanks. */
const read = (parts: readonly Part[], subject: string) =>
  ledgerLines(entryOf(parts, subject)).map(({ name, value }) => `${name}: ${value}`.replaceAll("\u202f", " "));
const clinic = { room: surgery, evaporationPerMin: { low: 0.2, high: 0.2 } };
const drop = { solvent: "chloroform", volumeMl: 0.1, atMin: 0 } as const;
const hypochlorite = {
  solution: "sodium hypochlorite",
  percent: 3,
  volumeMl: 10,
  minutes: 12,
  activated: "ultrasonic",
} as const;

describe("what a visit used, in lines", () => {
  // Three cartridges of 36 mg are 108 of the 490 mg that 70 kg allow (lidocaine label), 54 of 200 micrograms of epinephrine.
  it("tells agents and vasoconstrictors against their limits, and what is left", () => {
    const parts = visitParts({ anaesthetic: [{ ...lidocaine, cartridges: 3 }], nextAnaesthetic: lidocaine });
    const lines = read(parts, "anaesthetic of visit-1");
    expect(lines[0]).toBe("Anaesthetic: lidocaine 108 mg, 22 % of its limit; epinephrine 54 µg, 27 %");
    expect(lines).toContain("Left before a limit: 8 cartridges, 288 mg; bound by the vasoconstrictor");
    expect(lines.join("\n")).toMatch(/^Limit of lidocaine: 490 mg: /m);
    expect(read(visitParts({ nextAnaesthetic: lidocaine }), "anaesthetic of visit-1")[0]).toBe(
      "Anaesthetic: none given yet",
    );
    const twelve = visitParts({ anaesthetic: [{ ...lidocaine, cartridges: 12 }] });
    // 432 of 490 mg and 216 of 200 micrograms: more than all of a limit reads as more.
    expect(read(twelve, "anaesthetic of visit-1")[0]).toBe(
      "Anaesthetic: lidocaine 432 mg, 88 % of its limit; epinephrine 216 µg, 108 %",
    );
    expect(read(twelve, "anaesthetic of visit-1").join("\n")).toMatch(
      /^Stop: .*216 micrograms are above the limit of 200/m,
    );
  });

  // The known drop: 0.279 ppm over the worst hour, 14 % of the 2 ppm of NIOSH; 0.32 mg in 70 kg are 0.00457 mg/kg.
  it("tells the limit that a solvent comes closest to, what is breathed where, and what passed", () => {
    const parts = visitParts({ solvent: [drop], clinic, solventPassed: { massMg: 0.32, says: "" } });
    const lines = read(parts, "solvent of visit-1");
    expect(lines[0]).toMatch(
      /^Solvent in the air: 0\.279 ppm in the air near the mouth, below the 60-minute limit of NIOSH.*, 2 ppm, 14 % of it$/,
    );
    expect(lines).toContain("The air near the mouth, at most: 2.03 ppm");
    expect(lines).toContain("Volume at the first limit: 0.716 ml");
    expect(lines).toContain("Past the foramen: 0.0046 mg/kg");
    expect(lines).toContain("Against 0.01 mg/kg: 2.19 times below");
  });

  it("tells what met, what was used and for how long", () => {
    const chlorhexidine = { solution: "chlorhexidine", percent: 2, volumeMl: 5, minutes: 1, activated: "no" } as const;
    const lines = read(visitParts({ irrigation: [hypochlorite, chlorhexidine] }), "irrigation of visit-1");
    expect(lines[0]).toBe("Irrigants: 1 clash, sodium hypochlorite 10 ml, chlorhexidine 5 ml");
    expect(lines[1]).toMatch(/^Sodium hypochlorite met chlorhexidine: \S+/);
    expect(lines).toContain("Sodium hypochlorite, time: 12 min, 12 min of it activated");
  });

  it("tells seconds of ultrasound, dry ones apart", () => {
    const burst = { on: "fragment", seconds: 15, restSeconds: 30, coolant: "none" } as const;
    const lines = read(
      visitParts({ ultrasonics: [burst, { ...burst, coolant: "water" }] }),
      "ultrasonicHeat of visit-1",
    );
    expect(lines[0]).toBe("Ultrasound: 30 s in 2 bursts, 15 s of it dry");
    expect(lines).toContain("Rests between: 30 s");
  });

  it("has no line for an answer in another form", () => {
    for (const topic of ["anaesthetic", "solvent", "irrigation", "ultrasonicHeat"])
      expect(ledgerLines({ topic, output: { totals: 3 } })).toEqual([]);
    expect(speaksFor("solvent", "limits")).toBe(true);
  });
});

describe("what an entry about a visit is about", () => {
  const parts = visitParts({
    ...{ anaesthetic: [{ ...lidocaine, cartridges: 1 }], clinic, otherSolventCases: [{ ppm: 1, minutes: 10 }] },
    solvent: [drop, { ...drop, solvent: "xylene" }],
    irrigation: [{ ...hypochlorite, canal: "MB1" }],
    solventPassed: { massMg: 1, says: "" },
  });

  it("is the visit by its day, with canal, solvent, or who breathes it", () => {
    const entries = visitEntries(parts);
    expect(entries.map((entry) => entryTitle(entry, parts))).toEqual([
      "Anaesthetic",
      "Chloroform: solvent",
      "The patient, chloroform: solvent",
      "Xylene: solvent",
      "The patient, xylene: solvent",
      "Past the foramen: solvent",
      "MB1: irrigants",
    ]);
    for (const entry of entries) expect(entrySubject(entry, parts).film).toMatch(/^visit of 4 Mar/);
  });

  it("names the row of the visit that an input came from", () => {
    const path = { input: "given[0]", record: "visit-1/anaesthetic/0" };
    expect(inputOrigin(path, parts, "case-1")).toMatchObject({
      from: "visit: anaesthetic 1",
      href: "/case/case-1/visit-1",
    });
  });

  it("brings a refusal to the field of the visit", () => {
    const wrong = visitParts({
      anaesthetic: [
        { ...lidocaine, cartridges: 1 },
        { ...lidocaine, percent: 0.2, cartridges: 1 },
      ],
      irrigation: [{ ...hypochlorite, percent: 0.03 }],
    });
    expect(faultsAtPlaces(visitEntries(wrong), "visit-1").map(({ path }) => path)).toEqual([
      "anaesthetic.1.percent",
      "irrigation.0.percent",
    ]);
  });
});
