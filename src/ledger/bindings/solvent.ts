import { solventTopic } from "../../core/safety/solvent-topic.ts";
import { type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, Gap, Question } from "../binding.ts";
import { factsAsked } from "../fact-told.ts";
import { solventForPatientSubject, solventSubject } from "../solvent-told.ts";
import { extrusionGaps, extrusionTold } from "../visit-sums/extrusion-of-visit.ts";
import { limitsOfRoom, otherCasesOf, roomMissing, roomOf } from "../visit-sums/room-of-visit.ts";
import { type SolventUsed, solventAsked, solventsUsed } from "../visit-sums/solvents-used.ts";

type Visit = PartOf<"visit">;

/** Each solvent of each visit: in the air as the staff breathes it, as the patient does where that differs, and past the foramen. */
export const solventBinding: Binding = {
  topic: solventTopic,
  ask: ({ parts }) => partsOf(parts, "visit").flatMap((visit) => solventsOf(visit, parts)),
};

function solventsOf(visit: Visit, parts: readonly Part[]): (Question | Gap)[] {
  const used = solventsUsed(visit);
  const isOnly = used.length === 1;
  return [...used.flatMap((solvent) => airOf(solvent, { visit, parts, isOnly })), ...extrusionGaps(visit, used, parts)];
}

interface InVisit {
  readonly visit: Visit;
  readonly parts: readonly Part[];
  /** Whether the visit has no other solvent. */
  readonly isOnly: boolean;
}

function airOf(used: SolventUsed, { visit, parts, isOnly }: InVisit): (Question | Gap)[] {
  const name = isOnly ? undefined : used.name;
  const subject = solventSubject(visit.id, name);
  const solvent = solventAsked(used, visit.id);
  if ("why" in solvent) return [{ subject, ...solvent }];
  const room = roomOf(visit);
  if (room === undefined)
    return [{ subject, why: roomMissing, inputPaths: [{ input: "room", record: `${visit.id}/clinic/room` }] }];
  const breathed = [...solvent.told, ...room, ...limitsOfRoom(visit, used.name)];
  const others = otherCasesOf(visit);
  const passed = isOnly ? extrusionTold(visit, parts) : [];
  const forPatient = { subject: solventForPatientSubject(visit.id, name), ...factsAsked(breathed) };
  return [
    { subject, ...factsAsked([...breathed, ...others, ...passed]) },
    ...(others.length === 0 ? [] : [forPatient]),
  ];
}
