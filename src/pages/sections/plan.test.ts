import { describe, expect, it } from "vitest";
import { part, sampleParts, sampleSource } from "../../../test/sample-case.ts";
import { sampleWays, withWays } from "../../../test/sample-ways.ts";
import { linesOfModel, valueAtPath } from "../../../test/words-of-model.ts";
import { ledgerEntryId } from "../../core/ids.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import type { CaseSource } from "../case-source.ts";
import { numbersIn } from "../page-model.ts";
import { difficultyPages } from "./difficulty.ts";
import { planPages } from "./plan.ts";

const keptId = "c3".repeat(32);
const plan = (more: Partial<BodyOf<"plan">> = {}) =>
  part("plan", "plan-1", {
    ...{ madeOn: "2024-03-04", chosen: "retreat", because: "It reaches the canal.", risksNamed: ["One risk"] },
    options: [{ way: "retreat", forIt: "Reaches it", againstIt: "Two visits" }],
    ...more,
  });
const known = withWays(sampleSource());
const of = (more: Partial<BodyOf<"plan">> = {}): CaseSource => ({ ...known, parts: [...sampleParts(), plan(more)] });
const lines = (pages: ReturnType<typeof planPages>) => linesOfModel({ pages });

describe("the pages of a plan", () => {
  it("tell every way that is open or waits with its nearest series as n/N, and no way that does not fit", () => {
    const told = lines(planPages(of()));
    expect(told).toContain("80/100, 0.80 (0.71 to 0.87), healed, Known 2001*");
    expect(told).toContain("95/100, 0.95 (0.89 to 0.98), still in place, Known 2001*");
    expect(told).toEqual(expect.arrayContaining(["Retreatment (chosen)", "Apical surgery; needs an answer first"]));
    expect(told).not.toContain("Watch");
    expect(told).toContain("1 met, 1 not recorded");
  });

  it("say what spoke for and against, what was chosen and why, and draw the outcomes of the chosen way", () => {
    const pages = planPages(of());
    expect(lines(pages)).toEqual(
      expect.arrayContaining(["Reaches it", "Two visits", "It reaches the canal.", "One risk"]),
    );
    expect(pages.map(({ title }) => title)).toEqual(["Options and choice", "Published outcomes: retreatment"]);
    const [figure] = pages[1]?.blocks ?? [];
    expect(figure?.kind === "figure" && figure.figure.alternative).toContain("80 of 100");
  });

  it("tell a chosen way that does not fit, without outcomes where none is kept", () => {
    const pages = planPages(of({ chosen: "treat" }));
    expect(lines(pages)).toContain("Root canal treatment (chosen); does not fit");
    expect(pages).toHaveLength(1);
  });

  it("stand without the ledger's table where the ways are not computed", () => {
    const pages = planPages({ ...of(), ledger: [] });
    expect(lines(pages)).toContain("What speaks for and against each way");
    expect(lines(pages).join()).not.toContain("nearest to this case");
  });

  it("name for every number the entry and its place, of the entry that the choice was made on", () => {
    const now = known.ledger.find(({ topic }) => topic === "plan");
    if (now === undefined) throw new Error("the sample has ways");
    const then: LedgerEntry = { ...now, id: ledgerEntryId(keptId), output: sampleWays() };
    const source = { ...of({ planEntry: keptId }), kept: [then] };
    const numbers = numbersIn({ pages: planPages(source) });
    expect(numbers.length).toBeGreaterThan(7);
    for (const { ledgerEntry, path, text } of numbers) {
      expect(ledgerEntry).toBe(keptId);
      const held = valueAtPath(then.output, path);
      expect(typeof held === "number" ? held.toFixed(text.split(".")[1]?.length ?? 0) : held).toBe(text);
    }
    expect(numbersIn({ pages: planPages(of({ planEntry: keptId })) })[0]?.ledgerEntry).toBe(now.id);
  });
});

describe("the page of difficulty", () => {
  const fact = { id: "bend", group: "shape", canal: "MB1", says: "MB1 bends 60°, 40° above 20°", because: "it bends" };
  const entry: LedgerEntry = {
    ...{ id: ledgerEntryId(keptId), caseId: known.ledger[0]?.caseId as LedgerEntry["caseId"] },
    ...{ subject: "difficulty of plan-1", topic: "difficulty", topicVersion: 1, input: {}, inputPaths: [], at: "" },
    output: {
      facts: [
        {
          ...{ ...fact, value: 60, unit: "°", atLeast: true, lies: "above", by: 40 },
          threshold: { value: 20, source: "schneider-1971", mark: "memory", is: "above" },
        },
      ],
      within: [],
      asked: [{ id: "gag", group: "reach", says: "Does the patient gag?" }],
      basis: { formula: "rows", assumptions: [], sources: [] },
      ...{ cautions: [], notComputed: [] },
    },
  };

  it("is the list that stood at planning, each fact with its value, and what nobody recorded", () => {
    const pages = difficultyPages({ ...of({ difficultyEntry: keptId }), kept: [entry] });
    expect(pages[0]?.subtitle).toBe("day 0, as it stood at planning");
    expect(lines(pages)).toEqual(
      expect.arrayContaining(["harder to shape", "MB1 bends 60°, 40° above 20°", "at least 60°", "Schneider 1971*"]),
    );
    expect(lines(pages)).toContain("Does the patient gag.");
    expect(numbersIn({ pages })).toEqual([{ ledgerEntry: keptId, path: "facts[0].value", text: "60" }]);
  });

  it("is the list of the plan's day where none was kept, without a plan that of now, and not there without findings", () => {
    const ledger = [...known.ledger.filter(({ topic }) => topic !== "difficulty"), entry];
    expect(difficultyPages({ ...of(), ledger })[0]?.subtitle).toBe("day 0, with what was known then");
    const sheet = {
      id: "findings-1",
      kind: "findings",
      revision: 1,
      body: { takenOn: "2024-03-04" },
    } as unknown as Part;
    const now = [{ ...entry, subject: "difficulty of about" }];
    const examined = difficultyPages({ ...known, parts: [...sampleParts(), sheet], ledger: now });
    expect(examined[0]?.subtitle).toBe("day 0, as the record stands");
    expect(difficultyPages({ ...known, parts: sampleParts(), ledger })).toEqual([]);
  });

  it("has no total and no grade", () => {
    const words = lines(difficultyPages({ ...of({ difficultyEntry: keptId }), kept: [entry] })).join(" ");
    expect(words).not.toMatch(/\b(easy|moderate|high|minimal) difficulty|\d+ points|score/i);
  });
});
