import type { SolventInput } from "../../core/safety/solvent/solvent-input.ts";
import type { Part, PartOf } from "../../record/parts.ts";
import type { Gap } from "../binding.ts";
import type { FactTold } from "../fact-told.ts";
import { extrusionSubject } from "../solvent-told.ts";
import { bodyMassAt, massMissing } from "./person-at-visit.ts";
import type { SolventUsed } from "./solvents-used.ts";

type Visit = PartOf<"visit">;

/** What is taken to have passed the foramen, with the mass of the person; none where one of both is missing. */
export function extrusionTold(visit: Visit, parts: readonly Part[]): FactTold<keyof SolventInput>[] {
  const { solventPassed } = visit.body;
  const [mass] = bodyMassAt(visit, parts);
  if (solventPassed === undefined || mass === undefined || !hasAmount(solventPassed)) return [];
  const { says: _says, ...amount } = solventPassed;
  return [
    {
      field: "extrusion",
      value: { ...amount, bodyMassKg: mass.value },
      paths: [
        ...Object.keys(amount).map((name) => ({
          input: `extrusion.${name}`,
          record: `${visit.id}/solventPassed/${name}`,
        })),
        ...mass.paths.map(({ record }) => ({ input: "extrusion.bodyMassKg", record })),
      ],
    },
  ];
}

const hasAmount = ({ volumeMl, massMg }: NonNullable<Visit["body"]["solventPassed"]>): boolean =>
  volumeMl !== undefined || massMg !== undefined;

/** Why what passed the foramen is held against nothing, though it is written down. */
export function extrusionGaps(visit: Visit, used: readonly SolventUsed[], parts: readonly Part[]): Gap[] {
  const { solventPassed } = visit.body;
  if (solventPassed === undefined) return [];
  const gap = (why: string, record: string): Gap[] => [
    { subject: extrusionSubject(visit.id), why, inputPaths: [{ input: "extrusion", record: `${visit.id}/${record}` }] },
  ];
  if (!hasAmount(solventPassed))
    return gap("how much passed is not told; write millilitres or milligrams", "solventPassed");
  if (used.length === 0) return gap("no dose of a solvent is recorded in this visit", "solvent");
  if (used.length > 1) return gap("the visit has several solvents, and which of them passed is not told", "solvent");
  return bodyMassAt(visit, parts).length === 0 ? gap(massMissing, "vitalSigns/bodyMassKg") : [];
}
