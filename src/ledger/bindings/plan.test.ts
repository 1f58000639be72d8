import { describe, expect, it } from "vitest";
import { part } from "../../../test/sample-case.ts";
import { planOutput } from "../../core/diagnosis/plan/plan-output.ts";
import type { BodyOf, Part } from "../../record/parts.ts";
import { firstSettings } from "../../record/settings.ts";
import type { BindingContext } from "../binding.ts";
import { deriveLedger } from "../derive-ledger.ts";
import { planBinding } from "./plan.ts";

const about = part("case", "case-1", {
  ...{ pseudonym: "P-1", birthYear: 1969, sex: "female", tooth: "26", treatment: "retreatment" },
  ...{ presentedOn: "2026-01-10", complaint: "", referredFor: "", background: "", demo: false },
});
const notAsked = "notAsked" as const;
const cold = { reply: "notDone" } as const;

type Sheet = BodyOf<"findings">;
interface Change {
  readonly history?: Partial<Sheet["history"]>;
  readonly seen?: Partial<Sheet["seen"]>;
  readonly onFilm?: Partial<Sheet["onFilm"]>;
  readonly tooth?: Partial<Sheet["teeth"][number]>;
}

/** A sheet on which nothing was asked or done but what a change says. */
const sheet = (id: string, { history, seen, onFilm, tooth }: Change = {}, takenOn = "2026-01-10"): Part =>
  part("findings", id, {
    takenOn,
    history: {
      ...{ spontaneousPain: notAsked, painToCold: notAsked, painToHeat: notAsked, relievedByCold: notAsked },
      ...{ painOnBiting: notAsked, trauma: notAsked, recentOnset: notAsked, ...history },
    },
    teeth: [
      {
        ...{ tooth: "26", role: "tooth", cold, heat: cold, electric: "notDone", percussion: "notDone" },
        ...{ palpation: "notDone", bite: "notDone", mobility: "notDone", probingMm: {}, ...tooth },
      },
    ],
    seen: {
      ...{ swelling: "notDone", sinusTract: "notDone", caries: "notDone", crack: "notDone", restoration: "" },
      ...{ fever: notAsked, ...seen },
    },
    onFilm: {
      ...{ ligament: "notDone", lamina: "notDone", lucency: "notDone", sclerosis: notAsked, resorption: "notDone" },
      ...{ apex: "notDone", calcified: notAsked, earlierFilling: "notDone", ...onFilm },
    },
    note: "",
  });
const diagnosis = (pulpal: BodyOf<"diagnosis">["pulpal"], madeOn = "2026-01-11"): Part =>
  part("diagnosis", `diagnosis-${madeOn}`, {
    ...{ madeOn, taxonomy: "consensus2009", pulpal, apical: "asymptomaticApicalPeriodontitis", because: "" },
  });

type Outputs = Readonly<Record<string, unknown>>;
function asked(parts: readonly Part[], outputs: Outputs = {}) {
  const earlier: BindingContext["earlier"] = (subject) =>
    subject in outputs ? { entryId: `entry-of-${subject}`, output: outputs[subject] } : undefined;
  const [found] = planBinding.ask({ parts, settings: firstSettings, earlier });
  if (found === undefined) throw new Error("nothing asked");
  return { input: {}, ...found };
}
const placesOf = (fact: string, parts: readonly Part[], outputs?: Outputs) =>
  asked(parts, outputs).inputPaths.flatMap(({ input, record }) => (input === fact ? [record] : []));

describe("the plan of a case", () => {
  it("is one question of the case, a gap as long as there are neither findings nor a diagnosis", () => {
    expect(planBinding.ask({ parts: [], settings: firstSettings, earlier: () => undefined })).toEqual([]);
    expect(asked([about])).toMatchObject({ subject: "plan of case-1", why: expect.stringContaining("findings") });
    expect(asked([about, diagnosis("pulpNecrosis")])).toMatchObject({ subject: "plan of case-1" });
  });

  it("tells nothing of what was not asked or done", () => {
    expect(asked([about, sheet("f-1")]).input).toEqual({ tooth: "26", ageYears: 57 });
  });

  it("has a place of the record for every fact that it tells", () => {
    const parts = [about, sheet("f-1", { onFilm: { lucency: "apical", lucencyMm: 4 } }), diagnosis("pulpNecrosis")];
    const { input, inputPaths } = asked(parts);
    expect([...new Set(inputPaths.map((path) => path.input))].sort()).toEqual(Object.keys(input as object).sort());
    expect(placesOf("ageYears", parts)).toEqual(["case-1/birthYear", "case-1/presentedOn"]);
    expect(placesOf("lesion", parts)).toEqual(["f-1/onFilm/lucency"]);
    expect(placesOf("pulpal", parts)).toEqual(["diagnosis-2026-01-11/pulpal"]);
  });

  it.each([
    [{ onFilm: { lucency: "none" } }, { lesion: "none" }],
    [{ onFilm: { lucency: "apical", lucencyMm: 4 } }, { lesion: "present", lesionMm: 4 }],
    [{ onFilm: { lucency: "lateral", lucencyMm: 4 } }, {}],
    [{ onFilm: { apex: "open", calcified: "yes" } }, { apex: "open", calcified: "yes" }],
    [{ onFilm: { resorption: "external" } }, { resorption: "present" }],
    [{ onFilm: { earlierFilling: "none", earlierFillingEndMm: 2 } }, { earlierFilling: "none" }],
    [
      { onFilm: { earlierFilling: "present", earlierFillingEndMm: 2 } },
      { earlierFilling: "present", earlierFillingEndMm: 2 },
    ],
    [{ seen: { caries: "deep", exposure: "excavation" } }, { caries: "deep", exposure: "excavation" }],
    [
      { seen: { crack: "suspected", sinusTract: "traced", post: "yes" } },
      { crack: "suspected", sinusTract: "present", post: "yes" },
    ],
    [{ seen: { restoration: "full crown" } }, { crowned: "yes" }],
    [{ seen: { restoration: "bridge 24-26" } }, { crowned: "yes" }],
    [{ seen: { restoration: "composite, no crown" } }, { crowned: "no" }],
    [{ seen: { restoration: "crown without a post" } }, { crowned: "yes" }],
    [{ seen: { restoration: "amalgam" } }, {}],
    [{ seen: { ferruleHeightMm: 1, ferruleWidthMm: 0.8 } }, { ferruleHeightMm: 1, ferruleWidthMm: 0.8 }],
    [{ history: { painOnBiting: "yes" } }, { pain: "present" }],
    [{ history: { spontaneousPain: "no", painToCold: "no", painToHeat: "no", painOnBiting: "no" } }, { pain: "none" }],
    [{ history: { spontaneousPain: "no" } }, {}],
    [{ tooth: { mobility: 2 } }, { mobility: 2 }],
  ] as [Change, object][])("tells %j as %j", (change, facts) => {
    expect(asked([about, sheet("f-1", change)]).input).toEqual({ tooth: "26", ageYears: 57, ...facts });
  });

  const shallow = { mesiobuccal: 3, buccal: 2, distobuccal: 3, mesiolingual: 3, lingual: 2, distolingual: 3 };
  it.each([
    [shallow, { deepestProbingMm: 3, narrowDefect: "no" }],
    [
      { ...shallow, buccal: 8 },
      { deepestProbingMm: 8, narrowDefect: "yes" },
    ],
    [
      { ...shallow, buccal: 4 },
      { deepestProbingMm: 4, narrowDefect: "no" },
    ],
    [
      { ...shallow, buccal: 8, distobuccal: 7 },
      { deepestProbingMm: 8, narrowDefect: "no" },
    ],
    [{ buccal: 8 }, { deepestProbingMm: 8 }],
  ])("reads the probing %j as %j", (probingMm, facts) => {
    expect(asked([about, sheet("f-1", { tooth: { probingMm } })]).input).toEqual({
      tooth: "26",
      ageYears: 57,
      ...facts,
    });
  });

  it("takes the last findings and the last diagnosis, in whatever order they stand", () => {
    const parts = [
      ...[sheet("f-2", { onFilm: { apex: "closed" } }, "2026-03-01"), sheet("f-1", { onFilm: { apex: "open" } })],
      ...[diagnosis("previouslyTreated", "2026-03-01"), diagnosis("pulpNecrosis"), about],
    ];
    expect(asked(parts).input).toMatchObject({ apex: "closed", pulpal: "previouslyTreated" });
  });

  const healed = sheet("f-9", { onFilm: { lucency: "none" } }, "2027-02-01");
  const sick = sheet("f-1", { onFilm: { lucency: "apical" } });
  it("takes no sheet of a recall after the last diagnosis or plan: it describes the tooth after treatment", () => {
    expect(asked([about, sick, healed, diagnosis("pulpNecrosis")]).input).toMatchObject({ lesion: "present" });
    const planned = part("plan", "plan-1", {
      ...{ madeOn: "2027-02-01", options: [], chosen: "watch", because: "", risksNamed: [] },
    });
    expect(asked([about, sick, healed, diagnosis("pulpNecrosis"), planned]).input).toMatchObject({ lesion: "none" });
    expect(asked([about, sick, healed]).input).toMatchObject({ lesion: "none" });
  });

  it("takes the sheet there is where none is as old as the diagnosis", () => {
    expect(asked([about, healed, diagnosis("pulpNecrosis")]).input).toMatchObject({ lesion: "none" });
  });

  const film = (id: string, purpose: BodyOf<"film">["purpose"]): Part =>
    part("film", id, {
      ...{ hash: "ab".repeat(32), columns: 600, rows: 800, bitsStored: 12, takenOn: "2026-01-10", purpose },
      ...{ receptor: "unknown", uRunsTo: "unknown", caption: "" },
      technical: {
        sourceFormat: "png",
        sourceSha256: "ab".repeat(32),
        wasColour: false,
        lossy: false,
        inverted: false,
      },
    });
  const square: [number, number][] = [
    [0, 0],
    [9, 0],
    [9, 9],
    [0, 9],
  ];
  const outline = (id: string, what: string, on = "film-1") =>
    part("mark", id, { shape: "outline", film: on, what, points: square });
  const trace = (id: string, on: string) =>
    part("mark", id, { shape: "trace", film: on, polarity: "dark", anchors: square, points: square });
  const crownRoot = part("mark", "crown-1", {
    ...{ shape: "crownRoot", film: "film-1", crown: [0, 0], level: [0, 4], apex: [0, 9], levelIs: "boneCrest" },
  });

  it("sets what was measured above what was estimated, of several the largest", () => {
    const parts = [
      ...[about, sheet("f-1", { onFilm: { lucency: "none" } }), film("film-1", "diagnostic"), crownRoot],
      ...[outline("o-1", "lesion at MB1"), outline("o-2", "lesion at P"), outline("o-3", "sinus")],
    ];
    const outputs = {
      ...{ "lesion of o-1": { largestDiameterMm: 3 }, "lesion of o-2": { largestDiameterMm: 5 } },
      ...{ "lesion of o-3": { largestDiameterMm: 20 }, "crownRoot of crown-1": { crownToRoot: 0.8, kind: "clinical" } },
    };
    expect(asked(parts, outputs).input).toMatchObject({ lesion: "present", lesionMm: 5, crownToRoot: 0.8 });
    expect(placesOf("lesionMm", parts, outputs)).toEqual(["ledger/entry-of-lesion of o-2/largestDiameterMm"]);
    expect(placesOf("lesion", parts, outputs)).toEqual(["ledger/entry-of-lesion of o-2/largestDiameterMm"]);
    const anatomical = { "crownRoot of crown-1": { crownToRoot: 0.8, kind: "anatomical" } };
    expect(asked(parts, anatomical).input).not.toHaveProperty("crownToRoot");
  });

  it("reads no lesion of a recall, and no bend of a filled canal", () => {
    const parts = [
      ...[about, sheet("f-1"), film("film-1", "recall"), film("film-2", "workingLength"), film("film-3", "final")],
      ...[outline("o-1", "lesion"), trace("t-2", "film-2"), trace("t-3", "film-3")],
    ];
    const outputs = {
      ...{ "lesion of o-1": { largestDiameterMm: 3 } },
      ...{ "curvature of t-2": { schneiderDeg: 21 }, "curvature of t-3": { schneiderDeg: 40 } },
    };
    const { input } = asked(parts, outputs);
    expect(input).toMatchObject({ bendDeg: 21 });
    expect(input).not.toHaveProperty("lesion");
  });

  it("tells the history: flags that change a plan, and that it was taken at all", () => {
    const history = part("medicalHistory", "history-1", {
      ...{ takenOn: "2026-01-10", nothingToNote: false, medicines: [], note: "" },
      flags: [{ flag: "asthma" }, { flag: "anticoagulant" }],
    });
    const parts = [about, sheet("f-1"), history];
    expect(asked(parts).input).toMatchObject({ medical: ["anticoagulant"] });
    expect(placesOf("medical", parts)).toEqual(["history-1/flags"]);
  });

  const mishap = (what: BodyOf<"mishap">["what"], handled: BodyOf<"mishap">["handled"]) =>
    part("mishap", "mishap-1", {
      ...{ on: "2026-01-12", what, third: "apical", bend: "in", handled, toldPatient: "told", story: "" },
    });
  it.each([
    ["separatedInstrument", "left", { fragment: "present" }],
    ["separatedInstrument", "bypassed", { fragment: "present" }],
    ["separatedInstrument", "removed", {}],
    ["perforation", "repaired", { perforation: "present", morphology: "altered" }],
    ["ledge", "open", { morphology: "altered" }],
    ["block", "open", {}],
  ] as const)("a mishap %s that is %s tells %j", (what, handled, facts) => {
    expect(asked([about, sheet("f-1"), mishap(what, handled)]).input).toEqual({
      ...{ tooth: "26", ageYears: 57 },
      ...facts,
    });
  });

  it("tells what the plan itself holds: the canal's form, a crown, the person's own figures", () => {
    const own = [{ way: "retreat", what: "healed", kind: "healing", percent: 80, followUp: "a year", from: "logbook" }];
    const plan = part("plan", "plan-1", {
      ...{ madeOn: "2026-01-12", options: [], chosen: "retreat", because: "", risksNamed: [] },
      ...{ altered: "respected", crowned: "yes", own: own as BodyOf<"plan">["own"] },
    });
    const parts = [about, sheet("f-1"), plan];
    expect(asked(parts).input).toMatchObject({ morphology: "respected", crowned: "yes", own });
    expect(placesOf("morphology", parts)).toEqual(["plan-1/altered"]);
  });

  it("leaves out a figure of the person's own while it is being written", () => {
    const figure = { way: "retreat", what: "healed", kind: "healing", followUp: "a year", from: "logbook" } as const;
    const plan = (own: NonNullable<BodyOf<"plan">["own"]>) =>
      part("plan", "plan-1", {
        ...{ madeOn: "2026-01-12", options: [], chosen: "retreat", because: "", risksNamed: [] },
        own,
      });
    const whole = { ...figure, events: 8, n: 10 };
    const input = (own: NonNullable<BodyOf<"plan">["own"]>) => asked([about, sheet("f-1"), plan(own)]).input;
    expect(input([figure, whole, { ...figure, n: 10 }])).toMatchObject({ own: [whole] });
    expect(input([figure])).not.toHaveProperty("own");
  });

  const planned = part("plan", "plan-1", {
    ...{ madeOn: "2026-01-11", options: [], chosen: "retreat", because: "", risksNamed: [] },
  });
  const over = (parts: readonly Part[], outputs: Outputs = {}) => {
    const earlier: BindingContext["earlier"] = (subject) =>
      subject in outputs ? { entryId: subject, output: outputs[subject] } : undefined;
    return planBinding.ask({ parts, settings: firstSettings, earlier });
  };

  it("rests a plan on what was known on its day, and the case on what came later as well", () => {
    const later = [
      ...[mishap("separatedInstrument", "left"), film("film-1", "angled"), outline("o-1", "lesion")],
      part("medicalHistory", "history-1", {
        ...{ takenOn: "2026-01-12", nothingToNote: false, medicines: [], note: "", flags: [{ flag: "pregnancy" }] },
      }),
    ].map((one) => (one.kind === "film" ? { ...one, body: { ...one.body, takenOn: "2026-01-12" } } : one));
    const parts = [about, sheet("f-1"), diagnosis("previouslyTreated"), planned, ...later];
    const [then, now, ...more] = over(parts, { "lesion of o-1": { largestDiameterMm: 4 } });
    const before = {
      tooth: "26",
      ageYears: 57,
      pulpal: "previouslyTreated",
      apical: "asymptomaticApicalPeriodontitis",
    };
    expect(then).toMatchObject({ subject: "plan of plan-1", input: before });
    expect(Object.keys(Object(then && "input" in then && then.input))).toHaveLength(4);
    expect(now).toMatchObject({
      ...{ subject: "plan of case-1" },
      input: { ...before, fragment: "present", lesion: "present", lesionMm: 4, medical: ["pregnancy"] },
    });
    expect(more).toEqual([]);
  });

  it("asks of the plan alone as long as nothing has come since, and waits for a plan before any findings", () => {
    expect(over([about, sheet("f-1"), planned]).map(({ subject }) => subject)).toEqual(["plan of plan-1"]);
    const [gap, now] = over([about, planned, sheet("f-1", {}, "2026-02-01")]);
    expect(gap).toMatchObject({ subject: "plan of plan-1", why: expect.stringContaining("neither findings") });
    expect(now).toMatchObject({ subject: "plan of case-1", input: { tooth: "26" } });
  });

  it("is answered in the ledger, and refused at its place where facts clash", () => {
    const ledger = (parts: readonly Part[]) =>
      deriveLedger(
        { caseId: "case-a", parts, settings: firstSettings, at: "2026-01-12T00:00:00Z", known: () => undefined },
        [planBinding],
      );
    const told = { onFilm: { earlierFilling: "present", lucency: "apical" } } as const;
    const [entry] = ledger([about, sheet("f-1", told), diagnosis("previouslyTreated")]);
    expect(planOutput.parse(entry?.output).options).toHaveLength(12);
    const [clash] = ledger([
      about,
      sheet("f-1", { onFilm: { earlierFilling: "none" } }),
      diagnosis("previouslyTreated"),
    ]);
    expect(clash?.refused).toEqual(['earlierFilling: "none" in a previously treated tooth']);
  });
});
