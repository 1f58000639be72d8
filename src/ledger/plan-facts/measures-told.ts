import { z } from "zod";
import type { PlanInput } from "../../core/diagnosis/plan/plan-input.ts";
import { partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type EarlierRead, earlierRead } from "../earlier-read.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { isCalled } from "../mark-notes.ts";
import { marksOn } from "../marks-on.ts";

const lesionSize = z.looseObject({ largestDiameterMm: z.number() });
const clinicalRatio = z.looseObject({ crownToRoot: z.number(), kind: z.literal("clinical") });
const course = z.looseObject({ schneiderDeg: z.number() });

/** What was measured on the films: the largest lesion, the clinical ratio of crown to root, the sharpest bend. */
export function measuresTold(context: BindingContext): FactTold<keyof PlanInput>[] {
  const { parts } = context;
  const films = partsOf(parts, "film");
  const marks = <Shape extends "outline" | "crownRoot" | "trace">(shape: Shape, purposes = beforeTreatment) =>
    films.filter(({ body }) => purposes.has(body.purpose)).flatMap((film) => marksOn(parts, film.id, shape));
  const lesions = marks("outline").filter(({ body }) => isCalled(body.what, "lesion"));
  const sizes = earlierRead(context, lesionSize, about("lesion", lesions));
  const ratios = earlierRead(context, clinicalRatio, about("crownRoot", marks("crownRoot")));
  const courses = earlierRead(context, course, about("curvature", marks("trace", beforeFilling)));
  return [
    ...largest("lesionMm", "largestDiameterMm", sizes),
    ...largest("crownToRoot", "crownToRoot", ratios),
    ...largest("bendDeg", "schneiderDeg", courses),
  ];
}

const about = (topic: string, marks: readonly { readonly id: string }[]): string[] =>
  marks.map(({ id }) => `${topic} of ${id}`);

/** The other films show what treatment made of the tooth. */
const beforeTreatment: ReadonlySet<string> = new Set(["diagnostic", "angled"]);
/** A canal's bend stays what it was until it is filled. */
const beforeFilling: ReadonlySet<string> = new Set([...beforeTreatment, "workingLength", "masterCone"]);

function largest<Measure extends string>(
  field: keyof PlanInput,
  measure: Measure,
  measured: readonly EarlierRead<Readonly<Record<Measure, number>>>[],
): FactTold<keyof PlanInput>[] {
  const [most] = [...measured].sort((a, b) => b.read[measure] - a.read[measure]);
  if (most === undefined) return [];
  const record = most.record(measure);
  const lesion = field === "lesionMm" ? factTold("lesion", "present", record) : [];
  return [...factTold(field, most.read[measure], record), ...lesion];
}
