import type { DifficultyInput } from "../../core/diagnosis/difficulty/difficulty-input.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartOf, partsOf, thePart } from "../../record/parts.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { latestOf } from "../latest-of.ts";

type Findings = PartOf<"findings">;
type Seen = BodyOf<"findings">["seen"];
type OnFilm = BodyOf<"findings">["onFilm"];

/** What the sheets say, each fact by the last sheet that holds it, and the last physical status class. */
export function sheetFacts(parts: readonly Part[]): FactTold<keyof DifficultyInput>[] {
  const sheets = partsOf(parts, "findings");
  const seen = (
    field: keyof Seen & keyof DifficultyInput,
    read = (one: Seen): unknown => one[field],
  ): FactTold<keyof DifficultyInput>[] => lastTold(sheets, field, ({ body }) => read(body.seen), `seen/${field}`);
  return [
    ...seen("post", ({ post }) => yesNo(post)),
    ...seen("gag", ({ gag }) => yesNo(gag)),
    ...seen("rotationDeg"),
    ...seen("tiltDeg"),
    ...seen("mouthOpeningMm"),
    ...lastTold(sheets, "calcified", ({ body }) => yesNo(body.onFilm.calcified), "onFilm/calcified"),
    ...lastTold(sheets, "openApex", ({ body }) => openIn(body.onFilm), "onFilm/apex"),
    ...lastTold(sheets, "resorption", ({ body }) => resorptionIn(body.onFilm), "onFilm/resorption"),
    ...fillingTold(sheets, parts),
    ...statusTold(parts),
  ];
}

/** What was not done or not asked is no answer. */
const yesNo = (answer: "yes" | "no" | "notAsked" | undefined): boolean | undefined =>
  answer === "yes" ? true : answer === "no" ? false : undefined;
const openIn = ({ apex }: OnFilm): boolean | undefined => (apex === "notDone" ? undefined : apex === "open");
const resorptionIn = ({ resorption }: OnFilm): string | undefined =>
  resorption === "notDone" ? undefined : resorption;

function lastTold(
  sheets: readonly Findings[],
  field: keyof DifficultyInput,
  read: (sheet: Findings) => unknown,
  place: string,
): FactTold<keyof DifficultyInput>[] {
  const last = latestOf(sheets.filter((sheet) => read(sheet) !== undefined));
  return last === undefined ? [] : factTold(field, read(last), `${last.id}/${place}`);
}

/** Whether the tooth came filled and where the filling ends; without a word on any sheet, whether a canal came filled. */
function fillingTold(sheets: readonly Findings[], parts: readonly Part[]): FactTold<keyof DifficultyInput>[] {
  const last = latestOf(sheets.filter(({ body }) => body.onFilm.earlierFilling !== "notDone"));
  if (last === undefined) return filledBefore(parts);
  const { earlierFilling, earlierFillingEndMm: endMm } = last.body.onFilm;
  const present = earlierFilling === "present";
  const isMeasured = present && endMm !== undefined;
  const at = (input: string, field: string): InputPath => ({ input, record: `${last.id}/onFilm/${field}` });
  return [
    {
      field: "earlierFilling",
      value: { present, ...(isMeasured ? { endMm } : {}) },
      paths: [
        at("earlierFilling.present", "earlierFilling"),
        ...(isMeasured ? [at("earlierFilling.endMm", "earlierFillingEndMm")] : []),
      ],
    },
  ];
}

function filledBefore(parts: readonly Part[]): FactTold<keyof DifficultyInput>[] {
  const anatomy = thePart(parts, "anatomy");
  const canals = anatomy?.body.filledBefore ?? [];
  if (anatomy === undefined || canals.length === 0) return [];
  return factTold("earlierFilling", { present: true }, `${anatomy.id}/filledBefore`);
}

function statusTold(parts: readonly Part[]): FactTold<keyof DifficultyInput>[] {
  const last = latestOf(partsOf(parts, "medicalHistory").filter(({ body }) => body.physicalStatusClass !== undefined));
  return last === undefined
    ? []
    : factTold("physicalStatusClass", last.body.physicalStatusClass, `${last.id}/physicalStatusClass`);
}
