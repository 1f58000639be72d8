import type { PlanInput } from "../../core/diagnosis/plan/plan-input.ts";
import { narrowDefectIs } from "../../core/diagnosis/terms/probed-sites.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { latestOf } from "../latest-of.ts";

type Findings = PartOf<"findings">;

/** What the findings that a plan rests on say; what was not done or not asked is not told. */
export function findingsTold(parts: readonly Part[]): FactTold<keyof PlanInput>[] {
  const findings = findingsOfPlan(parts);
  return findings === undefined ? [] : [...filmTold(findings), ...seenTold(findings), ...toothTold(findings)];
}

/**
 * The last findings up to the day of the last diagnosis or plan: a sheet of a later recall describes the tooth after what
 * was planned. Where none is as old as that, or neither is recorded, the last ones.
 */
function findingsOfPlan(parts: readonly Part[]): Findings | undefined {
  const all = partsOf(parts, "findings");
  const planned = [...partsOf(parts, "diagnosis"), ...partsOf(parts, "plan")].map(({ body }) => body.madeOn).sort();
  const until = planned.at(-1);
  const before = all.filter(({ body }) => until === undefined || body.takenOn <= until);
  return latestOf(before.length > 0 ? before : all);
}

/** What a list of words becomes in the plan's; a word that is missing in it is not told. */
const as =
  (words: Readonly<Record<string, string>>) =>
  (value: string | undefined): string | undefined =>
    value === undefined ? undefined : words[value];

const presence = as({ yes: "present", no: "none", present: "present", none: "none", traced: "present" });
const yesOrNo = as({ yes: "yes", no: "no" });

function filmTold({ id, body: { onFilm } }: Findings): FactTold<keyof PlanInput>[] {
  const at = (field: string): string => `${id}/onFilm/${field}`;
  const lesion = as({ none: "none", apical: "present" })(onFilm.lucency);
  return [
    ...factTold("lesion", lesion, at("lucency")),
    ...factTold("lesionMm", lesion === "present" ? onFilm.lucencyMm : undefined, at("lucencyMm")),
    ...factTold("apex", as({ open: "open", closed: "closed" })(onFilm.apex), at("apex")),
    ...factTold("calcified", yesOrNo(onFilm.calcified), at("calcified")),
    ...factTold(
      "resorption",
      as({ none: "none", internal: "present", external: "present" })(onFilm.resorption),
      at("resorption"),
    ),
    ...factTold("earlierFilling", presence(onFilm.earlierFilling), at("earlierFilling")),
    ...factTold(
      "earlierFillingEndMm",
      onFilm.earlierFilling === "present" ? onFilm.earlierFillingEndMm : undefined,
      at("earlierFillingEndMm"),
    ),
  ];
}

function seenTold({ id, body: { seen, history } }: Findings): FactTold<keyof PlanInput>[] {
  const at = (field: string): string => `${id}/seen/${field}`;
  const done = (value: string | undefined): string | undefined => (value === "notDone" ? undefined : value);
  const pains = (["spontaneousPain", "painToCold", "painToHeat", "painOnBiting"] as const).map((field) => ({
    field,
    answer: history[field],
  }));
  const hurts = pains.filter(({ answer }) => answer === "yes");
  const pain = hurts.length > 0 ? "present" : pains.every(({ answer }) => answer === "no") ? "none" : undefined;
  const painFields = (hurts.length > 0 ? hurts : pains).map(({ field }) => `${id}/history/${field}`);
  return [
    ...factTold("caries", done(seen.caries), at("caries")),
    ...factTold("exposure", done(seen.exposure), at("exposure")),
    ...factTold("crack", done(seen.crack), at("crack")),
    ...factTold("sinusTract", presence(seen.sinusTract), at("sinusTract")),
    ...factTold("post", yesOrNo(seen.post), at("post")),
    ...factTold("crowned", crownIn(seen.restoration), at("restoration")),
    ...factTold("ferruleHeightMm", seen.ferruleHeightMm, at("ferruleHeightMm")),
    ...factTold("ferruleWidthMm", seen.ferruleWidthMm, at("ferruleWidthMm")),
    ...factTold("pain", pain, ...painFields),
  ];
}

/** A restoration whose note names a crown or a bridge, or says that there is none; any other note leaves it open. */
function crownIn(note: string): string | undefined {
  if (/\b(no|without)( an?)? (crown|bridge)\b/i.test(note)) return "no";
  return /\b(crown|bridge)\b/i.test(note) ? "yes" : undefined;
}

function toothTold({ id, body: { teeth } }: Findings): FactTold<keyof PlanInput>[] {
  const place = teeth.findIndex(({ role }) => role === "tooth");
  const tooth = teeth[place];
  if (tooth === undefined) return [];
  const at = (field: string): string => `${id}/teeth/${place}/${field}`;
  const depths = Object.values(tooth.probingMm).flatMap((depth) => depth ?? []);
  const narrow = narrowDefectIs(tooth.probingMm);
  return [
    ...factTold("mobility", tooth.mobility === "notDone" ? undefined : tooth.mobility, at("mobility")),
    ...factTold("deepestProbingMm", depths.length === 0 ? undefined : Math.max(...depths), at("probingMm")),
    ...factTold("narrowDefect", narrow === "unknown" ? undefined : narrow, at("probingMm")),
  ];
}
