import { z } from "zod";
import type { PlanInput } from "../../core/diagnosis/plan/plan-input.ts";
import { partsOf } from "../../record/parts.ts";
import type { BindingContext } from "../binding.ts";
import { type FactTold, factTold } from "../fact-told.ts";
import { isCalled } from "../mark-notes.ts";
import { marksOn } from "../marks-on.ts";

const lesionSize = z.looseObject({ largestDiameterMm: z.number() });
const ratio = z.looseObject({ crownToRoot: z.number(), kind: z.string() });
const course = z.looseObject({ schneiderDeg: z.number() });

/** A value that was measured on a film, and the place in the ledger where it stands. */
interface Measured {
  readonly value: number;
  readonly record: string;
}

/** What was measured on the films: the largest lesion, the clinical ratio of crown to root, the sharpest bend. */
export function measuresTold({ parts, earlier }: BindingContext): FactTold<keyof PlanInput>[] {
  const films = partsOf(parts, "film");
  const outputs = (subjects: readonly string[], field: string, read: (output: unknown) => number | undefined) =>
    subjects.flatMap((subject): Measured[] => {
      const found = earlier(subject);
      const value = found && read(found.output);
      return found === undefined || value === undefined ? [] : [{ value, record: `ledger/${found.entryId}/${field}` }];
    });
  const marks = <Shape extends "outline" | "crownRoot" | "trace">(shape: Shape, purposes = beforeTreatment) =>
    films.filter(({ body }) => purposes.has(body.purpose)).flatMap((film) => marksOn(parts, film.id, shape));
  const lesions = marks("outline").filter(({ body }) => isCalled(body.what, "lesion"));
  return [
    ...largest(
      "lesionMm",
      outputs(
        lesions.map(({ id }) => `lesion of ${id}`),
        "largestDiameterMm",
        (output) => lesionSize.safeParse(output).data?.largestDiameterMm,
      ),
    ),
    ...largest(
      "crownToRoot",
      outputs(
        marks("crownRoot").map(({ id }) => `crownRoot of ${id}`),
        "crownToRoot",
        clinicalRatio,
      ),
    ),
    ...largest(
      "bendDeg",
      outputs(
        marks("trace", beforeFilling).map(({ id }) => `curvature of ${id}`),
        "schneiderDeg",
        (output) => course.safeParse(output).data?.schneiderDeg,
      ),
    ),
  ];
}

/** The other films show what treatment made of the tooth. */
const beforeTreatment: ReadonlySet<string> = new Set(["diagnostic", "angled"]);
/** A canal's bend stays what it was until it is filled. */
const beforeFilling: ReadonlySet<string> = new Set([...beforeTreatment, "workingLength", "masterCone"]);

function clinicalRatio(output: unknown): number | undefined {
  const { data } = ratio.safeParse(output);
  return data?.kind === "clinical" ? data.crownToRoot : undefined;
}

function largest(field: keyof PlanInput, measured: readonly Measured[]): FactTold<keyof PlanInput>[] {
  const [most] = [...measured].sort((a, b) => b.value - a.value);
  if (most === undefined) return [];
  const lesion = field === "lesionMm" ? factTold("lesion", "present", most.record) : [];
  return [...factTold(field, most.value, most.record), ...lesion];
}
