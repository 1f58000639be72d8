import { z } from "zod";
import { intervalSchema } from "../core/basis.ts";
import { instrumentTopic } from "../core/instrument/instrument-topic.ts";
import { refusalCodes } from "../core/refusal.ts";
import { whatIfTopics } from "../ledger/what-if.ts";
import { cabinetKinds } from "../record/cabinet/cabinet-item.ts";
import { placeKinds } from "../record/calibration-film.ts";
import { documentKinds } from "../record/document-kind.ts";
import { dueKinds } from "../record/due.ts";
import { exerciseMarkSchema, exerciseSchema } from "../record/exercise.ts";
import { partTypes } from "../record/parts.ts";
import { settingsSchema } from "../record/settings.ts";

const text = z.string();
const orNull = text.nullable();

/** One form for each kind of part, so that a part leaves the server as the record would take it in. */
const part = z.union(
  Object.values(partTypes).map(({ kind, body }) =>
    z.strictObject({ id: text, kind: z.literal(kind), revision: z.int().min(1), body }),
  ),
);
const facts = z.strictObject({
  ...{ caseId: text, pseudonym: text, birthYear: z.int(), sex: text, tooth: text, treatment: text, demo: z.boolean() },
  ...{ presentedOn: text, lastOn: text, visits: z.int(), films: z.int(), mishaps: z.int(), canals: z.int() },
  ...{ pulpal: orNull, apical: orNull, fillingEndMm: z.number().nullable(), filledOn: orNull, lastRecallOn: orNull },
  ...{
    lastScore: z.int().nullable(),
    retained: z.boolean().nullable(),
    symptoms: orNull,
    nextOn: orNull,
    help: orNull,
  },
});
const ledgerEntry = z.strictObject({
  ...{ id: text, caseId: text, subject: text, topic: text, topicVersion: z.int(), input: z.unknown(), at: text },
  inputPaths: z.array(z.strictObject({ input: text, record: text })),
  ...{ output: z.unknown().optional(), refused: z.array(text).optional() },
});
const changeLine = z.strictObject({
  ...{
    sequence: z.int().min(1),
    at: text,
    who: text,
    words: text,
    inverts: z.int().optional(),
    touched: z.array(text),
  },
});
const caseView = z.strictObject({
  ...{
    caseId: text,
    sequence: z.int().min(1),
    stateHash: text,
    facts,
    parts: z.array(part),
    ledger: z.array(ledgerEntry),
  },
  ...{ undo: changeLine.optional(), redo: changeLine.optional() },
});
const item = <Kind extends keyof typeof cabinetKinds>(kind: Kind) =>
  z.strictObject({ id: text, kind: z.literal(kind), revision: z.int().min(1), body: cabinetKinds[kind] });
const counts = z.int().min(0);
const amount = z.number().min(0);
const fileTally = z.strictObject({
  ...{ uses: counts, canals: counts, cases: counts, sterilisations: counts, untimed: counts },
  ...{ turnsNet: amount, turnsSwept: amount, lastUsedOn: text.optional() },
  equivalentTurns: z.strictObject({ low: amount, high: amount, cases: z.int().min(1) }).optional(),
  over: z.array(
    z.strictObject({
      name: z.enum(["uses", "canals", "sterilisations", "turns", "equivalentTurns"]),
      ...{ limit: amount, found: amount },
    }),
  ),
});
const cabinet = z.strictObject({
  sequence: counts,
  items: z.array(
    z.discriminatedUnion("kind", [item("instrument"), item("file"), item("sequence"), item("stock"), item("template")]),
  ),
  shown: z.record(
    text,
    z.union([z.strictObject({ output: instrumentTopic.output }), z.strictObject({ refused: z.array(text).min(1) })]),
  ),
  files: z.record(text, fileTally),
  ...{ undo: changeLine.optional(), redo: changeLine.optional() },
});
const due = z.strictObject({
  ...{ caseId: text, partId: text, kind: z.enum(dueKinds), on: z.iso.date() },
  ...{ pseudonym: text, tooth: text, demo: z.boolean(), mark: z.string().regex(/^[0-9a-f]{6}$/) },
});
const whatIf = z.strictObject({
  answers: z.array(
    z.strictObject({
      ...{ topic: z.enum(whatIfTopics), subject: text, output: z.unknown().optional() },
      ...{ refusal: z.array(text).min(1).optional(), gap: text.optional() },
    }),
  ),
});
const printed = z.strictObject({ ledgerEntry: text, path: text, text });
const documentView = z.strictObject({
  ...{ id: text, as: z.enum(documentKinds), fileName: text, at: text, who: text },
  ...{ sequence: z.int(), bytes: z.int(), numbers: z.array(printed) },
});
/** A refusal as it leaves the server. */
export const refusalReply = z.strictObject({
  code: z.enum([...refusalCodes, "bug"]),
  message: text,
  facts: z.record(text, z.unknown()),
  faults: z.array(z.strictObject({ path: text, says: text })),
});
const job = z.strictObject({
  ...{
    id: text,
    state: z.enum(["running", "done", "failed", "stopped"]),
    fraction: z.number().min(0).max(1),
    says: text,
  },
  ...{ documentId: text.optional(), entryId: text.optional(), refusal: refusalReply.optional() },
});
const { seed, films: _films, marks: _marks, ...aboutExercise } = exerciseSchema.shape;
const exerciseLine = z.strictObject({ ...aboutExercise, marked: z.int().min(0) });
const calibration = z.strictObject({
  ...{ films: z.int(), marks: z.int(), exercises: z.array(exerciseLine) },
  clickSigma: z.strictObject({ px: z.number(), from: settingsSchema.shape.clickSigmaFrom }),
});
const exerciseStep = z.strictObject({
  ...{ film: text, tooth: text, columns: z.int(), rows: z.int(), uRunsTo: z.enum(["distal", "mesial"]) },
  ...{ round: z.union([z.literal(1), z.literal(2)]), mirrored: z.boolean() },
  places: z.array(z.strictObject({ kind: z.enum(placeKinds), says: text })),
});
const exercise = z.strictObject({
  ...{ ...aboutExercise, seed, steps: z.array(exerciseStep) },
  marks: z.array(exerciseMarkSchema.pick({ at: true, by: true })),
});
const source = z.strictObject({ id: text, reference: text, verification: z.enum(["seen", "memory"]) });
const topic = z.strictObject({ name: text, version: z.int(), summary: text, method: text, sources: z.array(source) });
const chance = { mean: z.number().min(0).max(1), interval: intervalSchema };
const counted = z.strictObject({
  ...{ ...chance, region: text, n: z.int().min(0), N: z.int().min(1), within: z.boolean() },
  ...{ reference: text, verification: z.enum(["seen", "memory"]) },
});
const hidden = z.strictObject({
  tooth: text,
  features: z.array(
    z.strictObject({ feature: text, is: text, prior: z.strictObject(chance), series: z.array(counted).min(1) }),
  ),
});
const demoState = z.enum(["loaded", "removed", "loading"]);
const tooth = z.object({ twoDigit: text, universal: text, quadrant: text, name: text });

/** What each route of the API answers with, by method and address; an answer of another form is a fault of the program. */
export const replySchemas: Readonly<Record<string, z.ZodType>> = {
  "GET /api/session": z.strictObject({ version: text, home: text, demo: demoState, recovered: z.array(text) }),
  "GET /api/settings": settingsSchema,
  "PUT /api/settings": settingsSchema,
  "GET /api/cases": z.array(facts),
  "POST /api/cases": caseView,
  "GET /api/cases/:caseId": caseView,
  "DELETE /api/cases/:caseId": z.strictObject({ caseId: text, headHash: text, at: text, who: text }),
  "GET /api/cases/:caseId/at/:sequence": caseView,
  "GET /api/cases/:caseId/changes": z.array(changeLine),
  "POST /api/cases/:caseId/gestures": caseView,
  "POST /api/cases/:caseId/undo": caseView,
  "POST /api/cases/:caseId/redo": caseView,
  "POST /api/cases/:caseId/what-if": whatIf,
  "POST /api/cases/:caseId/films": z.strictObject({ partId: text, case: caseView }),
  "POST /api/cases/:caseId/documents": job,
  "GET /api/cases/:caseId/documents": z.array(documentView),
  "POST /api/cases/:caseId/comparisons/:partId": job,
  "GET /api/jobs/:jobId": job,
  "DELETE /api/jobs/:jobId": job,
  "GET /api/documents/:id": documentView,
  "GET /api/ledger/:entryId": ledgerEntry,
  "GET /api/topics": z.array(topic),
  "GET /api/cabinet": cabinet,
  "GET /api/cabinet/changes": z.array(changeLine),
  "POST /api/cabinet/gestures": cabinet,
  "POST /api/cabinet/undo": cabinet,
  "POST /api/cabinet/redo": cabinet,
  "GET /api/due": z.array(due),
  "GET /api/calibration": calibration,
  "POST /api/calibration/exercises": exercise,
  "GET /api/calibration/exercises/:id": exercise,
  "DELETE /api/calibration/exercises/:id": calibration,
  "POST /api/calibration/exercises/:id/marks": exercise,
  "POST /api/calibration/exercises/:id/take-back": exercise,
  "POST /api/calibration/exercises/:id/finish": exercise,
  "POST /api/calibration/exercises/:id/use": job,
  "GET /api/teeth": z.array(tooth),
  "GET /api/teeth/:tooth/usual": z.object({ roots: z.array(z.unknown()), basis: z.literal("common practice") }),
  "GET /api/teeth/:tooth/hidden": hidden,
  "POST /api/demo": z.strictObject({ demo: demoState }),
  "DELETE /api/demo": z.strictObject({ demo: demoState }),
};

/** Routes of the API that answer with bytes. */
export const byteRoutes: readonly string[] = [
  "GET /api/due.ics",
  "GET /api/films/:hash",
  "GET /api/films/:hash/preview",
  "GET /api/comparisons/:entryId/:picture",
  "GET /api/calibration/films/:name",
  "GET /api/documents/:id/file",
];
