import { describe, expect, it } from "vitest";
import { Refusal } from "../core/refusal.ts";
import type { Operation } from "../record/change.ts";
import { type BodyOf, type Part, partsOf } from "../record/parts.ts";
import { firstSettings } from "../record/settings.ts";
import { anaestheticIfTold } from "./anaesthetic-told.ts";
import { outcomesOf, type SumsToDo } from "./derive-ledger.ts";
import { solventIfTold } from "./solvent-told.ts";
import { entryOf, lidocaine, surgery, visitParts } from "./visit-sums/visit-for-tests.ts";
import type { WhatIfAsk } from "./what-if.ts";
import { whatIfAnswers } from "./what-if-answers.ts";

type Visit = BodyOf<"visit">;
const doSums = async (sums: SumsToDo) => outcomesOf(sums);
const ask = (parts: readonly Part[], asks: readonly WhatIfAsk[]) =>
  whatIfAnswers(doSums, { parts, settings: firstSettings }, asks);

const drop = { solvent: "chloroform", volumeMl: 0.1, atMin: 0 } as const;
const parts = visitParts({
  anaesthetic: [{ ...lidocaine, cartridges: 8 }],
  solvent: [drop],
  clinic: { room: surgery, evaporationPerMin: { low: 0.2, high: 0.2 } },
});
const visit = partsOf(parts, "visit")[0]?.body;

/** The visit with something of it otherwise, laid over at a revision that nobody judges. */
const laid = (more: Partial<Visit> | object, baseRevision = 7): Operation[] => [
  { op: "put", id: "visit-1", kind: "visit", baseRevision, body: { ...visit, ...more } },
];

describe("a question what if", () => {
  it("without an operation answers what the ledger holds", async () => {
    const subjects = ["anaesthetic of visit-1", "solvent of visit-1"] as const;
    const [one, two] = await ask(parts, [
      { topic: "anaesthetic", subject: subjects[0], operations: [] },
      { topic: "solvent", subject: subjects[1], operations: [] },
    ]);
    expect(one?.output).toEqual(entryOf(parts, subjects[0]).output);
    expect(two?.output).toEqual(entryOf(parts, subjects[1]).output);
  });

  // Ten cartridges of 18 micrograms are 180 of the 200 of a healthy person, twelve are 216.
  it("tells what wanted cartridges would come to, and asks before the limit is passed", async () => {
    const asks = [2, 4].map(
      (cartridges): WhatIfAsk => ({
        topic: "anaesthetic",
        subject: "anaesthetic of visit-1",
        operations: laid({ nextAnaesthetic: { ...lidocaine, cartridges } }),
      }),
    );
    const wanted = (await ask(parts, asks)).map((answer) => anaestheticIfTold(answer)?.output?.planned?.wanted);
    expect(wanted).toMatchObject([
      { cartridges: 2, mg: 72, overLimit: false, asks: [] },
      {
        cartridges: 4,
        mg: 144,
        overLimit: true,
        asks: [expect.stringContaining("216 micrograms are above the limit of 200")],
      },
    ]);
  });

  it("answers each in its order: twice the volume is twice the vapour, more fresh air is less", async () => {
    const solvent = (more: object): WhatIfAsk => ({
      topic: "solvent",
      subject: "solvent of visit-1",
      operations: laid(more),
    });
    const answers = await ask(parts, [
      solvent({}),
      solvent({ solvent: [{ ...drop, volumeMl: 0.2 }] }),
      solvent({ clinic: { ...visit?.clinic, room: { ...surgery, airChangesPerHour: 30 } } }),
      solvent({ solvent: [{ ...drop, recoveredFraction: 0.5 }] }),
    ]);
    const [now = 0, more = 0, air = 0, suction = 0] = answers.map(
      (answer) => solventIfTold(answer)?.output?.far.mean60.ppm,
    );
    expect(more / now).toBeCloseTo(2, 9);
    expect(suction / now).toBeCloseTo(0.5, 9);
    expect(air).toBeLessThan(now / 2);
  });

  it("changes nothing of the case", async () => {
    const before = JSON.stringify(parts);
    await ask(parts, [{ topic: "solvent", subject: "solvent of visit-1", operations: laid({ solvent: [] }) }]);
    expect(JSON.stringify(parts)).toBe(before);
  });

  it("says what is missing, and what the sum refuses", async () => {
    const [gap, none, refused] = await ask(parts, [
      { topic: "solvent", subject: "solvent of visit-1", operations: laid({ clinic: {} }) },
      { topic: "irrigation", subject: "irrigation of visit-1", operations: [] },
      {
        topic: "anaesthetic",
        subject: "anaesthetic of visit-1",
        operations: laid({ nextAnaesthetic: { ...lidocaine, percent: 0.2 } }),
      },
    ]);
    expect(gap?.gap).toContain("the room was not set");
    expect(none?.gap).toContain("no sum is called irrigation of visit-1");
    expect(refused?.refusal).toEqual([expect.stringContaining("planned.percent: 0.2 is unusual")]);
    expect(anaestheticIfTold(refused)?.why).toContain("planned.percent");
    expect(anaestheticIfTold(undefined)).toBeUndefined();
  });

  it.each([
    [
      "a negative number of cartridges",
      laid({ anaesthetic: [{ ...lidocaine, cartridges: -1 }] }),
      "anaesthetic[0].cartridges",
    ],
    [
      "a strength as a share",
      laid({ anaesthetic: [{ ...lidocaine, percent: 0.02, cartridges: 1 }] }),
      "anaesthetic[0].percent",
    ],
    [
      "a ratio as its reciprocal",
      laid({ nextAnaesthetic: { ...lidocaine, vasoconstrictor: { name: "epinephrine", ratio: 0.00001 } } }),
      "nextAnaesthetic.vasoconstrictor.ratio",
    ],
    ["less than no solvent", laid({ solvent: [{ ...drop, volumeMl: -0.1 }] }), "solvent[0].volumeMl"],
  ])("refuses %s as the record does, with the same path", async (_name, operations, path) => {
    const asks: WhatIfAsk[] = [
      { topic: "solvent", subject: "solvent of visit-1", operations: [] },
      { topic: "anaesthetic", subject: "anaesthetic of visit-1", operations },
    ];
    const thrown = await ask(parts, asks).catch((error: unknown) => error);
    if (!(thrown instanceof Refusal)) throw new Error("it was not refused");
    expect(thrown.code).toBe("input.invalid");
    expect(thrown.faults.map((fault) => fault.path)).toEqual([path]);
    expect(thrown.facts).toMatchObject({ ask: 1 });
  });
});
