import { expect, test } from "vitest";
import { aboutBody, consentBody } from "../../test/samples/gestures.ts";
import { dayOf } from "./day-of.ts";
import { factsOf } from "./facts.ts";
import type { Part } from "./parts.ts";
import { readPart } from "./read-part.ts";

const part = (id: string, kind: string, body: unknown): Part => readPart({ id, kind, version: 1, revision: 1, body });
const about = part("about", "case", aboutBody);
const row = (canal: string, state: string, fillingEndMm?: number) => ({
  ...{ canal, state, patency: "patent", reference: "cusp" },
  ...(fillingEndMm === undefined ? {} : { fillingEndMm }),
});
const visit = (id: string, on: string, canals: unknown[], more: object = {}): Part =>
  part(id, "visit", {
    ...{ on, aim: "", holdPoints: [], timeOut: "notDone", historyConfirmed: true, canals, lots: [], films: [] },
    ...{ isolation: { rubberDam: "used" }, magnification: "microscope", anaesthetic: [], irrigation: [] },
    ...{ instruments: [], solvent: [], flareUp: "none", told: "", note: "", ...more },
  });
const recall = (id: string, on: string, scores: number[], more: object = {}): Part =>
  part(id, "recall", {
    ...{ on, retained: "retained", functional: "yes", symptoms: "none", percussion: "none", palpation: "none" },
    ...{ sinusTract: "none", swelling: "none", mobility: 0, restoration: "sound", onFilm: "smaller", imaging: "film" },
    ...{ readings: scores.map((score) => ({ reader: "resident", score, blind: true })), note: "", ...more },
  });

test("no facts while nothing says which tooth of whom it is", () => {
  expect(factsOf("case-1", [])).toBeUndefined();
  expect(factsOf("case-1", [part("consent-1", "consent", consentBody("2026-02-11"))])).toBeUndefined();
});

test("a case that has only been made: everything else is none", () => {
  expect(factsOf("case-1", [about])).toEqual({
    ...{ caseId: "case-1", pseudonym: "P-0417", birthYear: 1969, sex: "female", tooth: "26", treatment: "retreatment" },
    ...{ demo: false, presentedOn: "2026-02-10", lastOn: "2026-02-10", visits: 0, films: 0, mishaps: 0, canals: 0 },
    ...{ pulpal: null, apical: null, fillingEndMm: null, filledOn: null, lastRecallOn: null, lastScore: null },
    ...{ retained: null, symptoms: null, nextOn: null, help: null },
  });
});

test("the filling's worst end counts every canal as its last filling left it, over several visits", () => {
  const parts = [
    about,
    visit("visit-2", "2026-03-20", [row("P", "filled", 0.5), row("MB1", "filled", 1.2)], {
      help: "alone",
      nextOn: "2026-09-20",
    }),
    visit("visit-1", "2026-03-01", [row("DB", "filled", 3), row("MB1", "filled", -2), row("P", "shaped", 9)], {
      help: "seen",
    }),
  ];
  // |3 - 1| = 2 is the largest distance from 1 mm short; MB1's -2 was filled again, P's 9 was no filling.
  expect(factsOf("case-1", parts)).toMatchObject({
    ...{
      fillingEndMm: 3,
      filledOn: "2026-03-20",
      help: "alone",
      nextOn: "2026-09-20",
      visits: 2,
      lastOn: "2026-03-20",
    },
  });
});

test("the last recall tells how the tooth is, its highest score the bone", () => {
  const parts = [
    about,
    recall("recall-2", "2027-03-20", [2, 3], { retained: "lost", symptoms: "other" }),
    recall("recall-1", "2026-09-20", [5], { nextOn: "2027-03-20" }),
  ];
  expect(factsOf("case-1", parts)).toMatchObject({
    ...{ lastRecallOn: "2027-03-20", lastScore: 3, retained: false, symptoms: "other", nextOn: null },
  });
  expect(factsOf("case-1", [about, recall("recall-1", "2026-09-20", [])])).toMatchObject({
    lastScore: null,
    retained: true,
  });
});

test("the next day is the one that was named last, and none is left once a recall names none or the tooth is lost", () => {
  const treated = visit("visit-1", "2026-03-01", [], { nextOn: "2026-09-01" });
  const next = (...parts: Part[]) => factsOf("case-1", [about, treated, ...parts])?.nextOn;
  expect(next()).toBe("2026-09-01");
  expect(next(recall("recall-1", "2026-09-03", [], { nextOn: "2027-03-01" }))).toBe("2027-03-01");
  expect(next(recall("recall-1", "2026-09-03", []))).toBeNull();
  expect(next(recall("recall-1", "2026-09-03", [], { retained: "lost", nextOn: "2027-03-01" }))).toBeNull();
});

test("of two diagnoses the later day holds, of one day the one that came last", () => {
  const diagnosis = (id: string, madeOn: string, pulpal: string) =>
    part(id, "diagnosis", { madeOn, taxonomy: "consensus2009", pulpal, apical: "normalApicalTissues", because: "" });
  const [a, b, c] = [
    diagnosis("diagnosis-a", "2026-02-12", "pulpNecrosis"),
    diagnosis("diagnosis-b", "2026-02-11", "normalPulp"),
    diagnosis("diagnosis-c", "2026-02-12", "previouslyTreated"),
  ];
  expect(factsOf("case-1", [about, a, b])?.pulpal).toBe("pulpNecrosis");
  expect(factsOf("case-1", [about, a, b, c])?.pulpal).toBe("previouslyTreated");
});

test("a part without a day has none", () => {
  expect(dayOf(about)).toBe("2026-02-10");
  const mark = { film: "film-1", shape: "spot", what: "", at: [1, 2] };
  expect(dayOf(part("mark-1", "mark", mark))).toBeUndefined();
});
