import { diagnosisTopic } from "../../core/diagnosis/diagnosis-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, Question } from "../binding.ts";
import { existingTreatment } from "../existing-treatment.ts";
import { latestOf } from "../latest-of.ts";

/** What each sheet of findings speaks for: a question a sheet, as the case stood on its day. */
export const diagnosisBinding: Binding = {
  topic: diagnosisTopic,
  ask: ({ parts }) => partsOf(parts, "findings").map((findings) => ofSheet(findings, parts)),
};

function ofSheet(findings: PartOf<"findings">, parts: readonly Part[]): Question {
  const { takenOn, history, teeth } = findings.body;
  const existing = existingTreatment(parts, findings);
  const drug = antiresorptive(parts, takenOn);
  const seen = seenOf(findings.body.seen);
  const onFilm = onFilmOf(findings.body.onFilm);
  const read = { history, seen, onFilm };
  const { protocol = {} } = findings.body;
  return {
    subject: `diagnosis of ${findings.id}`,
    input: {
      ...{ takenOn, teeth, ...read, ...protocol },
      ...(existing === undefined ? {} : { existing: existing.canals }),
      ...(drug === undefined ? {} : { medical: { antiresorptive: drug.taken } }),
    },
    inputPaths: [
      { input: "takenOn", record: `${findings.id}/takenOn` },
      ...Object.entries(read).flatMap(([group, fields]) => fieldPaths(findings.id, group, fields)),
      ...teeth.map((_, at): InputPath => ({ input: `teeth[${at}]`, record: `${findings.id}/teeth/${at}` })),
      ...Object.keys(protocol).map((cut): InputPath => ({ input: cut, record: `${findings.id}/protocol/${cut}` })),
      ...(existing?.paths ?? []),
      ...(drug === undefined ? [] : [{ input: "medical.antiresorptive", record: drug.record }]),
    ],
  };
}

const fieldPaths = (id: string, group: string, fields: object): InputPath[] =>
  Object.keys(fields).map((field) => ({ input: `${group}.${field}`, record: `${id}/${group}/${field}` }));

/** What was seen of the disease; what makes a tooth hard to treat or to restore is asked elsewhere. */
function seenOf(seen: BodyOf<"findings">["seen"]) {
  const { post: _post, rotationDeg: _rotation, tiltDeg: _tilt, mouthOpeningMm: _opening, gag: _gag, ...rest } = seen;
  const { ferruleHeightMm: _height, ferruleWidthMm: _width, ...ofDisease } = rest;
  return ofDisease;
}

function onFilmOf(onFilm: BodyOf<"findings">["onFilm"]) {
  const { earlierFillingEndMm: _end, lucencyAtRoots: _roots, ...ofDisease } = onFilm;
  return ofDisease;
}

/** Whether the last history on or before a day names an antiresorptive drug; a history that names none says no. */
function antiresorptive(parts: readonly Part[], day: string): { taken: "yes" | "no"; record: string } | undefined {
  const last = latestOf(partsOf(parts, "medicalHistory").filter(({ body }) => body.takenOn <= day));
  if (last === undefined) return undefined;
  const at = last.body.flags.findIndex(({ flag }) => flag === "antiresorptive");
  return at < 0 ? { taken: "no", record: `${last.id}/flags` } : { taken: "yes", record: `${last.id}/flags/${at}` };
}
