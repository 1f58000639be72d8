import type { AnaestheticInput } from "../../core/safety/anaesthetic/anaesthetic-input.ts";
import { type Part, type PartOf, partsOf, thePart } from "../../record/parts.ts";
import { partsOn } from "../../record/parts-on.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { latestOf } from "../latest-of.ts";

type Visit = PartOf<"visit">;
/** What the sum of the anaesthetic asks of a person. */
type Told = FactTold<keyof AnaestheticInput>;

/** What is to be done where nobody has written down how much a person weighs. */
export const massMissing =
  "the body mass is not recorded; write it into the vital signs of this visit, or into the medical history";

/** The body mass as measured at the visit, else by the last history up to its day that holds one. */
export function bodyMassAt(visit: Visit, parts: readonly Part[]): FactTold<"bodyMassKg">[] {
  const measured = visit.body.vitalSigns?.bodyMassKg;
  if (measured !== undefined) return factTold("bodyMassKg", measured, `${visit.id}/vitalSigns/bodyMassKg`);
  const last = latestOf(historiesAt(visit, parts).filter(({ body }) => body.bodyMassKg !== undefined));
  return last === undefined ? [] : factTold("bodyMassKg", last.body.bodyMassKg, `${last.id}/bodyMassKg`);
}

/** Histories that were taken up to the day of a visit. */
export const historiesAt = ({ body: { on } }: Visit, parts: readonly Part[]): PartOf<"medicalHistory">[] =>
  partsOf(partsOn(parts, on), "medicalHistory");

/** Age, height and sex as far as they are recorded. */
export const personAt = (visit: Visit, parts: readonly Part[]): Told[] => [
  ...ageAt(visit, parts),
  ...factTold("heightCm" as const, visit.body.vitalSigns?.heightCm, `${visit.id}/vitalSigns/heightCm`),
  ...sexOf(parts),
];

const oldest = 120;

/** The age as it was asked at the visit; else the lower of the two that a year of birth allows, because limits of a child bind lower. */
function ageAt({ id, body }: Visit, parts: readonly Part[]): Told[] {
  const told = body.vitalSigns?.ageYears;
  if (told !== undefined) return factTold("ageYears" as const, told, `${id}/vitalSigns/ageYears`);
  const about = thePart(parts, "case");
  if (about === undefined) return [];
  const years = Math.max(0, Number(body.on.slice(0, 4)) - about.body.birthYear - 1);
  if (years > oldest) return [];
  const from = [`${about.id}/birthYear`, `${id}/on`];
  return [...factTold("ageYears" as const, years, ...from), ...factTold("ageIsLeast" as const, true, ...from)];
}

function sexOf(parts: readonly Part[]): Told[] {
  const about = thePart(parts, "case");
  const sex = about?.body.sex;
  if (about === undefined || (sex !== "female" && sex !== "male")) return [];
  return factTold("sex" as const, sex, `${about.id}/sex`);
}
