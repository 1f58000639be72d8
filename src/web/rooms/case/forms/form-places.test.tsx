import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { z } from "zod";
import { mishapKinds } from "../../../../record/parts/mishap-kinds.ts";
import { type Part, type PartKind, partTypes } from "../../../../record/parts.ts";
import { EditPart } from "../../../parts/fields/editing.tsx";
import { DraftBook } from "../../../record/draft-book.ts";
import { detailOf, type Mishap, withKind } from "../mishap/with-kind.ts";
import { canalRowAtStart, newBodies } from "../new-bodies.ts";
import { VisitForm } from "../visit/visit-form.tsx";
import { AnatomyForm } from "./anatomy-form.tsx";
import { CaseForm } from "./case-form.tsx";
import { ConsentForm } from "./consent-form.tsx";
import { DiagnosisForm } from "./diagnosis-form.tsx";
import { ClaimForm, ReferenceForm } from "./evidence-forms.tsx";
import { FindingsForm } from "./findings-form.tsx";
import { HandbackForm } from "./handback-form.tsx";
import { HistoryForm } from "./history-form.tsx";
import { MishapForm } from "./mishap-form.tsx";
import { PlanForm } from "./plan-form.tsx";
import { RecallForm } from "./recall-form.tsx";
import { ReviewForm } from "./review-form.tsx";

const day = "2026-01-02";
const reference = {
  title: "t",
  authors: [],
  journal: "",
  volume: "",
  pages: "",
  doi: "",
  design: "bench",
  takeaway: "",
};
const claim = { about: "plan-a", says: "s", speaks: "for", references: ["ref-a"], state: "contested", verdict: "" };
const instrument = { size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous" };

/** A body of each kind with one row in every list and every group there, so that every field is drawn. */
const cases: readonly { readonly kind: PartKind; readonly form: React.ReactNode; readonly body: object }[] = [
  { kind: "case", form: <CaseForm />, body: { presentedOn: day } },
  {
    kind: "medicalHistory",
    form: <HistoryForm />,
    body: { ...newBodies.medicalHistory(day), flags: [{ flag: "other" }], medicines: ["x"] },
  },
  {
    kind: "findings",
    form: <FindingsForm />,
    body: {
      ...newBodies.findings(day, "26"),
      existing: [{ canal: "MB1", is: "opened" }],
      prior: { from: "" },
      protocol: {},
    },
  },
  { kind: "diagnosis", form: <DiagnosisForm />, body: newBodies.diagnosis(day) },
  {
    kind: "plan",
    form: <PlanForm />,
    body: { ...newBodies.plan(day), options: [{ way: "watch", forIt: "", againstIt: "" }], risksNamed: ["x"] },
  },
  { kind: "consent", form: <ConsentForm />, body: newBodies.consent(day) },
  { kind: "mishap", form: <MishapForm />, body: { ...newBodies.mishap(day), instrument } },
  { kind: "handback", form: <HandbackForm />, body: newBodies.handback(day) },
  {
    kind: "recall",
    form: <RecallForm />,
    body: { ...newBodies.recall(day), readings: [{ reader: "resident", score: 2, blind: true }] },
  },
  { kind: "review", form: <ReviewForm />, body: newBodies.review(day) },
  { kind: "anatomy", form: <AnatomyForm tooth="26" />, body: { roots: [{ name: "MB", levels: [2, 1] }], foundBy: [] } },
  { kind: "reference", form: <ReferenceForm />, body: reference },
  { kind: "claim", form: <ClaimForm decisions={[]} references={[]} />, body: claim },
  {
    kind: "visit",
    form: <VisitForm picture={null} />,
    body: {
      ...newBodies.visit(day, {}),
      canals: [canalRowAtStart("MB1")],
      anaesthetic: [{ agent: "articaine", percent: 4, cartridgeMl: 1.7, cartridges: 1 }],
      irrigation: [{ solution: "EDTA", volumeMl: 1, minutes: 1, activated: "no" }],
      instruments: [instrument],
      solvent: [{ solvent: "xylene", volumeMl: 0.1, atMin: 1 }],
      holdPoints: [{ at: "access", seenBy: "nobody", says: "" }],
      lots: [{ material: "", lot: "" }],
      instrumentSet: { set: "", steriliserCycle: "" },
      medicament: { kind: "none" },
      temporary: { material: "" },
    },
  },
];

const measured = { value: 3, sigma: 0.2 };

/** A mishap of each kind with everything said that its page can say. */
const mishaps = mishapKinds.map((kind) => {
  const body = withKind({ ...newBodies.mishap(day), instrument } as Mishap, kind);
  const lengths = { lengthMm: measured, remainingLengthMm: measured, brokenEndDiameterMm: measured };
  return {
    ...{ kind: "mishap" as const, what: kind, form: <MishapForm /> },
    body: {
      ...body,
      ...(body.separated ? { separated: { ...body.separated, ...lengths, tipDiameterMm: measured } } : {}),
      ...{ steps: [{ step: "ledge-stop", at: "2026-01-02T10:00:00Z" }], toldPatient: "told" },
      told: { on: day, by: "both", said: "s", agreed: "" },
    },
  };
});

/** Every place that a form reads, as a body that tells what it is asked for. */
function placesOf({ body, ...one }: Pick<(typeof cases)[number], "kind" | "form" | "body">): ReadonlySet<string> {
  const places = new Set<string>();
  renderedOf({ ...one, body: watched(body, "", places) });
  return places;
}

function renderedOf({ kind, form, body }: Pick<(typeof cases)[number], "kind" | "form" | "body">): string {
  const part = { id: "part-a", kind, revision: 1, body } as Part;
  const book = new DraftBook({ put: async () => Promise.reject(new Error("nothing is recorded here")) });
  return renderToStaticMarkup(
    <Router ssrPath="/">
      <QueryClientProvider client={new QueryClient()}>
        <EditPart part={part} title="Form" draft={undefined} book={book}>
          {form}
        </EditPart>
      </QueryClientProvider>
    </Router>,
  );
}

function watched(value: object, at: string, places: Set<string>): object {
  return new Proxy(value, {
    get(target, name) {
      const inner: unknown = Reflect.get(target, name);
      if (typeof name === "symbol" || name in Array.prototype || name === "constructor") return inner;
      const place = at === "" ? name : `${at}.${name}`;
      places.add(place);
      return typeof inner === "object" && inner !== null ? watched(inner, place, places) : inner;
    },
  });
}

/** Whether a form of the record has a field at a place. */
function hasPlace(schema: z.ZodType, place: string): boolean {
  const [name = "", ...rest] = place.split(".");
  const inner = innerOf(schema, name);
  return inner !== undefined && (rest.length === 0 || hasPlace(inner, rest.join(".")));
}

function innerOf(schema: z.ZodType, name: string): z.ZodType | undefined {
  if (schema instanceof z.ZodOptional) return innerOf(schema.unwrap() as z.ZodType, name);
  if (schema instanceof z.ZodArray) return /^\d+$/.test(name) ? (schema.element as z.ZodType) : undefined;
  return schema instanceof z.ZodObject ? (schema.shape[name] as z.ZodType | undefined) : undefined;
}

describe("the forms", () => {
  it.each(cases)("of $kind write only where the record has a field", (one) => {
    const schema: z.ZodType = partTypes[one.kind].body;
    const places = placesOf(one);
    expect(places.size).toBeGreaterThan(3);
    expect([...places].filter((place) => !hasPlace(schema, place))).toEqual([]);
  });

  it.each(mishaps)("of a mishap, $what, writes only where the record has a field", (one) => {
    expect(partTypes.mishap.body.safeParse(one.body).error).toBeUndefined();
    const places = [...placesOf(one)];
    expect(places.filter((place) => !hasPlace(partTypes.mishap.body, place))).toEqual([]);
    const detail = detailOf(one.what);
    if (detail !== undefined)
      expect(places.filter((place) => place.startsWith(`${detail}.`)).length).toBeGreaterThan(2);
  });

  it.each([
    ["perforation", ["place", "side", "diameterMm", "aboveBoneMm", "pocket", "sealedAfterMin", "sealedWith"]],
    ["irrigantExtrusion", ["solution", "percent", "volumeMl", "needle", "needleFromStopMm", "needleBound"]],
    ["irrigantExtrusion", ["time", "pain", "spread", "signs"]],
    ["missedCanal", ["found", "foundBy", "since"]],
    ["swallowedOrInhaled", ["object", "time", "signs", "rubberDam", "counted"]],
  ] as const)("of %s have a field for what its steps ask to note: %j", (kind, asked) => {
    const [one] = mishaps.filter(({ what }) => what === kind);
    const places = one === undefined ? new Set() : placesOf(one);
    expect(asked.filter((field) => !places.has(`${kind}.${field}`))).toEqual([]);
  });

  it("of a mishap says of an instrument nothing that was not told", () => {
    const body = { ...newBodies.mishap(day), instrument: {} };
    const html = renderedOf({ kind: "mishap", form: <MishapForm />, body });
    expect(html).toContain("Not told yet: size, taper, alloy, movement.");
    const whole = renderedOf({ kind: "mishap", form: <MishapForm />, body: { ...body, instrument } });
    expect(whole).not.toContain("Not told yet");
  });

  it.each(["medicalHistory", "diagnosis", "plan", "consent", "mishap", "handback", "recall", "review"] as const)(
    "begin a %s that the record takes",
    (kind) => {
      expect(partTypes[kind].body.safeParse(newBodies[kind](day)).error).toBeUndefined();
    },
  );

  it("begin findings and a visit that the record takes", () => {
    expect(partTypes.findings.body.safeParse(newBodies.findings(day, "26")).error).toBeUndefined();
    const canals = { MB1: { state: "blocked", with: "a ledge" }, P: { state: "filled" } } as const;
    const visit = partTypes.visit.body.parse(newBodies.visit(day, canals));
    expect(visit.canals).toMatchObject([{ canal: "MB1", state: "blocked", blockedBy: "a ledge" }, { state: "filled" }]);
  });
});
