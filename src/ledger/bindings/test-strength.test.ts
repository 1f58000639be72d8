import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { testStrengthBinding } from "./test-strength.ts";

type Findings = BodyOf<"findings">;
type Tested = Findings["teeth"][number];

const row = (change: Partial<Tested> = {}): Tested => ({
  ...{ tooth: "26", role: "tooth", cold: { reply: "none" }, heat: { reply: "notDone" }, electric: 80 },
  ...{ percussion: "slight", palpation: "none", bite: "notDone", mobility: 0, probingMm: {} },
  ...change,
});
const control = (change: Partial<Tested> = {}): Tested =>
  row({ tooth: "25", role: "control", cold: { reply: "normal" }, electric: 30, percussion: "none", ...change });
const asked = "notAsked" as const;
const prior = { events: 43, n: 100, from: "own series" };

const sheet = (change: Partial<Findings> = {}) =>
  part("findings", "sheet-1", {
    ...{ takenOn: "2024-03-04", teeth: [control(), row()], prior, note: "" },
    history: {
      ...{ spontaneousPain: asked, painToCold: asked, painToHeat: asked, relievedByCold: asked },
      ...{ painOnBiting: asked, trauma: "no", recentOnset: asked },
    },
    seen: { swelling: "none", sinusTract: "none", caries: "deep", crack: "notDone", restoration: "", fever: "no" },
    onFilm: {
      ...{ ligament: "normal", lamina: "intact", lucency: "none", sclerosis: "no", resorption: "none" },
      ...{ apex: "closed", calcified: "no", earlierFilling: "none" },
    },
    ...change,
  });

const derived = (change: Partial<Findings> = {}): LedgerEntry[] =>
  deriveLedger(
    {
      ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
      parts: [...sampleParts(), sheet(change)],
    },
    [testStrengthBinding],
  );
const only = (change: Partial<Findings> = {}): LedgerEntry => {
  const [entry] = derived(change);
  if (entry === undefined) throw new Error("nothing was asked");
  return entry;
};

describe("the strength of a sheet's tests", () => {
  it("reads what was done on the tooth, each with its place, and leaves out what was not", () => {
    const { subject, input, inputPaths, output } = only();
    expect(subject).toBe("testStrength of sheet-1");
    expect(input).toEqual({
      priorCounts: { events: 43, n: 100 },
      results: [
        { test: "cold", result: "positive" },
        { test: "electric", result: "negative" },
        { test: "percussion", result: "positive" },
        { test: "palpation", result: "negative" },
      ],
      controls: "replied",
    });
    expect(inputPaths).toEqual([
      { input: "priorCounts.events", record: "sheet-1/prior/events" },
      { input: "priorCounts.n", record: "sheet-1/prior/n" },
      { input: "results[0].result", record: "sheet-1/teeth/1/cold/reply" },
      { input: "results[1].result", record: "sheet-1/teeth/1/electric" },
      { input: "results[2].result", record: "sheet-1/teeth/1/percussion" },
      { input: "results[3].result", record: "sheet-1/teeth/1/palpation" },
      { input: "controls", record: "sheet-1/teeth" },
    ]);
    expect(output).toMatchObject({ steps: [{ test: "cold" }, { test: "electric" }, { test: "percussion" }] });
  });

  it.each([
    [{ cold: { reply: "normal" } }, ["negative", "negative"]],
    [{ cold: { reply: "heightened" } }, ["negative", "negative"]],
    [{ cold: { reply: "notDone" }, heat: { reply: "none" }, electric: "none" }, ["positive", "positive"]],
    [{ electric: "notDone", percussion: "painful", palpation: "slight" }, ["positive", "positive", "positive"]],
  ] as const)("reads %j as %j", (change, results) => {
    const touch = { percussion: "notDone", palpation: "notDone" } as const;
    const { input } = only({ teeth: [row({ ...touch, ...change })] });
    expect(input).toMatchObject({ results: results.map((result) => ({ result })), controls: "notTested" });
  });

  it("takes a share where no counts are given, and the dependence beside it", () => {
    const { input, inputPaths } = only({ prior: { share: 0.428, dependence: 0.5, from: "a review" } });
    expect(input).toMatchObject({ prior: 0.428, dependence: 0.5 });
    expect(inputPaths.slice(0, 2)).toEqual([
      { input: "prior", record: "sheet-1/prior/share" },
      { input: "dependence", record: "sheet-1/prior/dependence" },
    ]);
  });

  it.each([[undefined], [{ from: "not yet known" }], [{ events: 4, from: "of how many is not known" }]])(
    "takes no probability by itself: %j leaves a gap that says what to give",
    (given) => {
      const { prior: _, ...rest } = sheet().body as Findings;
      const { output, refused } = only({
        ...rest,
        ...(given === undefined ? { prior: undefined } : { prior: given }),
      } as Findings);
      expect(output).toBeUndefined();
      expect(refused?.join()).toContain("give a share, or events of n, in the findings");
      expect(refused?.join()).toContain("42.8 %: Balevi B");
    },
  );

  it("says where controls gave no reply", () => {
    const silent = control({ cold: { reply: "none" }, electric: "none" });
    expect(only({ teeth: [row(), silent] }).input).toMatchObject({ controls: "noneReplied" });
    const untested = control({ cold: { reply: "notDone" }, electric: "notDone" });
    expect(only({ teeth: [row(), untested] }).input).toMatchObject({ controls: "notTested" });
    expect(only({ teeth: [row(), silent, control({ tooth: "27" })] }).input).toMatchObject({ controls: "replied" });
  });

  it("says what may keep a vital pulp from replying, with its place", () => {
    const { history, onFilm } = sheet().body as Findings;
    const hurt = (traumaOn?: string) =>
      only({ history: { ...history, trauma: "yes", ...(traumaOn === undefined ? {} : { traumaOn }) } }).input;
    expect(hurt()).toMatchObject({ replyMayFailFor: ["trauma"] });
    expect(hurt("2024-02-01")).toMatchObject({ replyMayFailFor: ["trauma"] });
    expect(hurt("2023-02-01")).not.toHaveProperty("replyMayFailFor");
    const { input, inputPaths } = only({ onFilm: { ...onFilm, apex: "open", calcified: "yes" } });
    expect(input).toMatchObject({ replyMayFailFor: ["openApex", "calcified"] });
    expect(inputPaths).toContainEqual({ input: "replyMayFailFor[1]", record: "sheet-1/onFilm/calcified" });
  });

  it("asks nothing of a tooth that was filled or opened before, nor where no reply was asked for", () => {
    const { onFilm } = sheet().body as Findings;
    expect(derived({ onFilm: { ...onFilm, earlierFilling: "present" } })).toEqual([]);
    expect(derived({ existing: [{ canal: "MB1", is: "opened" }] })).toEqual([]);
    expect(derived({ existing: [{ canal: "MB1", is: "untouched" }] })).toHaveLength(1);
    expect(derived({ teeth: [row({ cold: { reply: "notDone" }, electric: "notDone" })] })).toEqual([]);
    expect(derived({ teeth: [control()] })).toEqual([]);
  });
});
