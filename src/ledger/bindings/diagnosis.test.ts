import { describe, expect, it } from "vitest";
import { part, sampleParts } from "../../../test/sample-case.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { diagnosisBinding } from "./diagnosis.ts";

type Findings = BodyOf<"findings">;
const asked = "notAsked" as const;

const sheet = (change: Partial<Findings> = {}, id = "sheet-1") =>
  part("findings", id, {
    ...{ takenOn: "2024-03-04", note: "" },
    teeth: [
      {
        ...{ tooth: "26", role: "tooth", cold: { reply: "none" }, heat: { reply: "notDone" }, electric: "none" },
        ...{ percussion: "painful", palpation: "none", bite: "notDone", mobility: 0, probingMm: {} },
      },
      {
        ...{ tooth: "25", role: "control", cold: { reply: "normal" }, heat: { reply: "notDone" }, electric: 30 },
        ...{ percussion: "none", palpation: "none", bite: "notDone", mobility: 0, probingMm: {} },
      },
    ],
    history: {
      ...{ spontaneousPain: asked, painToCold: asked, painToHeat: asked, relievedByCold: asked },
      ...{ painOnBiting: asked, trauma: "no", recentOnset: asked },
    },
    seen: { swelling: "none", sinusTract: "none", caries: "deep", crack: "notDone", restoration: "", fever: "no" },
    onFilm: {
      ...{ ligament: "normal", lamina: "intact", lucency: "none", sclerosis: "no", resorption: "none" },
      ...{ apex: "closed", calcified: "no", earlierFilling: "notDone" },
    },
    ...change,
  });

const anatomy = (body: Partial<BodyOf<"anatomy">> = {}) =>
  part("anatomy", "roots-1", { foundBy: [], roots: [{ name: "MB", levels: [2], orifices: ["MB1", "MB2"] }], ...body });
const history = (takenOn: string, flags: BodyOf<"medicalHistory">["flags"], id = "history-1") =>
  part("medicalHistory", id, { takenOn, nothingToNote: false, flags, medicines: [], note: "" });
const visitOn = (on: string, state: BodyOf<"visit">["canals"][number]["state"]): Part => {
  const visit = sampleParts().find((one) => one.kind === "visit");
  if (visit?.kind !== "visit") throw new Error("the sample has no visit");
  const [row] = visit.body.canals;
  if (row === undefined) throw new Error("the sample's visit has no canal");
  return part("visit", `visit-${on}`, { ...visit.body, on, films: [], canals: [{ ...row, canal: "MB1", state }] });
};

const derived = (...parts: Part[]): LedgerEntry[] =>
  deriveLedger(
    {
      ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z", known: () => undefined },
      parts,
    },
    [diagnosisBinding],
  );
const only = (...parts: Part[]): LedgerEntry => {
  const [entry] = derived(...parts);
  if (entry === undefined) throw new Error("nothing was asked");
  return entry;
};
const terms = (entry: LedgerEntry) => {
  const output = entry.output as { pulpal: { term: string }; apical: { term: string } };
  return [output.pulpal.term, output.apical.term];
};

describe("the diagnosis in the ledger", () => {
  it("asks once a sheet, by its name, each value with its place in the record", () => {
    const entries = derived(sheet(), sheet({ takenOn: "2024-05-01" }, "sheet-2"));
    expect(entries.map(({ subject }) => subject)).toEqual(["diagnosis of sheet-1", "diagnosis of sheet-2"]);
    expect(terms(only(sheet()))).toEqual(["Pulp necrosis", "Symptomatic apical periodontitis"]);
    expect(only(sheet()).inputPaths).toEqual(
      expect.arrayContaining([
        { input: "takenOn", record: "sheet-1/takenOn" },
        { input: "history.painToCold", record: "sheet-1/history/painToCold" },
        { input: "seen.caries", record: "sheet-1/seen/caries" },
        { input: "onFilm.lucency", record: "sheet-1/onFilm/lucency" },
        { input: "teeth[1]", record: "sheet-1/teeth/1" },
      ]),
    );
  });

  it("leaves out what is asked elsewhere, so that it changes no entry", () => {
    const before = only(sheet());
    const { seen, onFilm } = sheet().body as Findings;
    const restoring = { post: "yes", gag: "yes", tiltDeg: 20, ferruleHeightMm: 2, rotationDeg: 3 } as const;
    const after = only(
      sheet({
        seen: { ...seen, ...restoring, mouthOpeningMm: 40, ferruleWidthMm: 1 },
        onFilm: { ...onFilm, earlierFillingEndMm: 1, lucencyAtRoots: ["MB"] },
        prior: { share: 0.4, from: "own series" },
      }),
    );
    expect(after.id).toBe(before.id);
  });

  it("takes existing treatment from the sheet itself, whatever anatomy and visits say", () => {
    const own = sheet({ existing: [{ canal: "MB1", is: "opened" }] });
    const entry = only(own, anatomy({ filledBefore: ["MB1"] }), visitOn("2024-01-01", "filled"));
    expect(terms(entry)[0]).toBe("Previously initiated therapy");
    expect(entry.inputPaths).toContainEqual({ input: "existing", record: "sheet-1/existing" });
  });

  it("takes it from the anatomy, from visits before the day, and never from one on the day or later", () => {
    const filled = only(sheet(), anatomy({ filledBefore: ["MB1"] }));
    expect(terms(filled)[0]).toBe("Previously treated");
    expect(filled.input).toMatchObject({
      existing: [
        { canal: "MB1", is: "filled" },
        { canal: "MB2", is: "untouched" },
      ],
    });
    expect(filled.inputPaths).toContainEqual({ input: "existing", record: "roots-1/filledBefore" });

    const opened = only(sheet(), anatomy(), visitOn("2024-03-03", "medicated"));
    expect(terms(opened)[0]).toBe("Previously initiated therapy");
    expect(opened.inputPaths).toContainEqual({ input: "existing", record: "visit-2024-03-03/canals" });

    const later = only(
      sheet(),
      anatomy({ filledBefore: [] }),
      visitOn("2024-03-04", "filled"),
      visitOn("2024-04-01", "filled"),
    );
    expect(terms(later)[0]).toBe("Pulp necrosis");
  });

  it("says nothing of existing treatment where nobody recorded any, an empty list among them", () => {
    expect(only(sheet({ existing: [] })).input).not.toHaveProperty("existing");
    expect(terms(only(sheet({ existing: [] }), anatomy({ filledBefore: ["MB1"] })))[0]).toBe("Previously treated");
    expect(only(sheet(), anatomy(), visitOn("2024-03-04", "filled")).input).not.toHaveProperty("existing");
  });

  it("takes an antiresorptive drug from the last history on or before the day", () => {
    const tract = sheet({ seen: { ...(sheet().body as Findings).seen, sinusTract: "present" } });
    const drug: BodyOf<"medicalHistory">["flags"] = [{ flag: "diabetes" }, { flag: "antiresorptive" }];
    const taken = only(tract, history("2024-03-04", drug), history("2024-02-01", [], "history-0"));
    expect(terms(taken)[1]).toBe("not determined");
    expect(taken.inputPaths).toContainEqual({ input: "medical.antiresorptive", record: "history-1/flags/1" });
    const notYet = only(tract, history("2024-03-05", drug), history("2024-02-01", [], "history-0"));
    expect(terms(notYet)[1]).toBe("Chronic apical abscess");
    expect(notYet.input).toMatchObject({ medical: { antiresorptive: "no" } });
    expect(only(tract).input).not.toHaveProperty("medical");
  });

  it("judges by the cuts that the sheet itself holds", () => {
    const [tooth, control] = (sheet().body as Findings).teeth;
    if (tooth === undefined || control === undefined) throw new Error("the sheet has no teeth");
    const lasting = {
      ...tooth,
      cold: { reply: "heightened" as const, lingersSeconds: 8 },
      electric: "notDone" as const,
    };
    const judged = (protocol: Findings["protocol"]) =>
      only(sheet({ teeth: [lasting, control], ...(protocol === undefined ? {} : { protocol }) }));
    const status = (entry: LedgerEntry) => (entry.output as { pulpal: { status: string } }).pulpal.status;
    expect(status(judged(undefined))).toBe("possible");
    const cut = judged({ lingeringFromSeconds: 5 });
    expect([terms(cut)[0], status(cut)]).toEqual(["Symptomatic irreversible pulpitis", "determined"]);
    expect(cut.inputPaths).toContainEqual({
      input: "lingeringFromSeconds",
      record: "sheet-1/protocol/lingeringFromSeconds",
    });
    expect(judged({ newTraumaUntilDays: 90 }).input).toMatchObject({ newTraumaUntilDays: 90 });
  });

  it("keeps the topic's refusal, with the place", () => {
    const [tooth, control] = (sheet().body as Findings).teeth;
    if (tooth === undefined || control === undefined) throw new Error("the sheet has no teeth");
    const lasting = { ...tooth, cold: { reply: "none" as const, lingersSeconds: 12 } };
    expect(only(sheet({ teeth: [lasting, control] })).refused?.join()).toContain("teeth[0].cold.lingersSeconds");
  });
});
