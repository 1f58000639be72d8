import { z } from "zod";
import type { Interval } from "../core/basis.ts";
import type { Fault, RefusalCode } from "../core/refusal.ts";
import type { FileTally, ShownInstrument } from "../ledger/cabinet-read.ts";
import { type WhatIfAnswer, whatIfTopics } from "../ledger/what-if.ts";
import type { CabinetItem } from "../record/cabinet/cabinet-item.ts";
import type { CalibrationFilm, PlaceKind } from "../record/calibration-film.ts";
import { type Change, gestureSchema } from "../record/change.ts";
import type { DocumentKind } from "../record/document-kind.ts";
import type { DueOfCase } from "../record/due.ts";
import { type Exercise, exerciseMarkSchema } from "../record/exercise.ts";
import type { CaseFacts } from "../record/facts.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { casePart } from "../record/parts/case.ts";
import type { BodyOf, Part } from "../record/parts.ts";
import type { Settings } from "../record/settings.ts";

/**
 * What goes over the local API, as types; the rooms read these and nothing else of the server.
 *
 * GET    /api/session                          SessionView
 * GET    /api/settings                         Settings        PUT the same
 * GET    /api/cases                            CaseFacts[]     POST NewCase gives CaseView
 * GET    /api/cases/:caseId                    CaseView        DELETE removes, leaves a tombstone
 * GET    /api/cases/:caseId/at/:sequence       CaseView as it stood
 * GET    /api/cases/:caseId/changes            ChangeLine[]
 * POST   /api/cases/:caseId/gestures           Gesture gives CaseView
 * POST   /api/cases/:caseId/undo | /redo       { sequence }? as seen at the top gives CaseView
 * POST   /api/cases/:caseId/what-if            WhatIf gives WhatIfView; nothing is recorded
 * POST   /api/cases/:caseId/films?FilmImport   bytes of the file give FilmImported
 * POST   /api/cases/:caseId/documents          { as } gives Job
 * GET    /api/cases/:caseId/documents          DocumentView[]
 * POST   /api/cases/:caseId/comparisons/:partId Job; its entry is in the ledger when it is done
 * GET    /api/comparisons/:entryId/aligned | difference   8- or 16-bit grey PNG on the first film's pixels
 * GET    /api/jobs/:jobId                      Job             DELETE stops it
 * GET    /api/documents/:id/file               the file         GET /api/documents/:id gives DocumentView
 * GET    /api/films/:hash                      16-bit grey PNG  GET /api/films/:hash/preview?width=320 8-bit PNG
 * GET    /api/ledger/:entryId                  LedgerEntry, current or not
 * GET    /api/cabinet                          CabinetView     GET /api/cabinet/changes gives ChangeLine[]
 * POST   /api/cabinet/gestures                 CabinetGesture gives CabinetView
 * POST   /api/cabinet/undo | /redo             { sequence }? as seen at the top gives CabinetView
 * GET    /api/due?today&until?                 DueView[]       GET /api/due.ics?today&until?&demo? iCalendar
 * GET    /api/calibration                      CalibrationView
 * POST   /api/calibration/exercises            begins one, gives ExerciseView
 * GET    /api/calibration/exercises/:id        ExerciseView    DELETE removes one under way, gives CalibrationView
 * POST   /api/calibration/exercises/:id/marks  NewExerciseMark gives ExerciseView; /take-back { number } the same
 * POST   /api/calibration/exercises/:id/finish ExerciseView    /use { which } gives Job
 * GET    /api/calibration/films/:name          8-bit grey PNG
 * GET    /api/teeth/:tooth/hidden              HiddenView
 * GET    /api/topics                           TopicView[]
 * POST   /api/demo   loads it                  DELETE /api/demo removes it
 * Every refusal: RefusalView with the status that docs/refusals.md names.
 */
export interface CaseView {
  readonly caseId: string;
  readonly sequence: number;
  readonly stateHash: string;
  readonly facts: CaseFacts;
  readonly parts: readonly Part[];
  /** The entries that hold for these parts. */
  readonly ledger: readonly LedgerEntry[];
  /** What an undo or a redo would take back, in words. */
  readonly undo?: ChangeLine;
  readonly redo?: ChangeLine;
}

/** A change without its patches. */
export type ChangeLine = Pick<Change, "sequence" | "at" | "who" | "words"> & {
  readonly inverts?: number;
  readonly touched: readonly string[];
};

/** The clinic's cabinet: its instruments, its counted files and its sequences, with what is computed of them. */
export interface CabinetView {
  /** The last change; 0 before the first. */
  readonly sequence: number;
  readonly items: readonly CabinetItem[];
  /** What each instrument measures, by its id. */
  readonly shown: Readonly<Record<string, ShownInstrument>>;
  /** What each counted file has behind it, by its id. */
  readonly files: Readonly<Record<string, FileTally>>;
  /** What an undo or a redo would take back. */
  readonly undo?: ChangeLine;
  readonly redo?: ChangeLine;
}

/** One thing that a case owes, by day. */
export interface DueView extends Omit<DueOfCase, "revision"> {
  /** The case's short mark, as it stands in a calendar. */
  readonly mark: string;
}

/** What a window needs to know at its start. */
export interface SessionView {
  readonly version: string;
  readonly home: string;
  readonly demo: "loaded" | "removed" | "loading";
  readonly recovered: readonly string[];
}

/** What a new case needs. */
export const newCaseSchema = z.strictObject({ case: casePart.body });
/** Questions "what if": each one sum by its subject, with operations as in a gesture laid over the case as it stands. */
export const whatIfSchema = z.strictObject({
  asks: z
    .array(
      z.strictObject({
        topic: z.enum(whatIfTopics),
        subject: z.string().min(1).max(200),
        operations: z.array(gestureSchema.shape.operations.element).max(20),
      }),
    )
    .min(1)
    .max(12),
});
/** What was asked, in the same order. */
export interface WhatIfView {
  readonly answers: readonly WhatIfAnswer[];
}
const count = z.coerce.number().int().min(0).max(20_000);
/** How a film is taken in: its file's name (only for messages), the day, and what is done at import. */
export const filmImportSchema = z.object({
  name: z.string().max(200),
  takenOn: z.iso.date(),
  purpose: z.enum(["diagnostic", "angled", "workingLength", "masterCone", "final", "recall", "other"]),
  invert: z.enum(["yes", "no"]).default("no"),
  cropColumn: count.optional(),
  cropRow: count.optional(),
  cropColumns: count.optional(),
  cropRows: count.optional(),
});
/** See {@link filmImportSchema}. */
export type FilmImport = z.input<typeof filmImportSchema>;

/** A film that was taken in: the part that stands for it, and the case. */
export interface FilmImported {
  readonly partId: string;
  readonly case: CaseView;
}

/** Long work: how far it is, and what came of it. */
export interface Job {
  readonly id: string;
  readonly state: "running" | "done" | "failed" | "stopped";
  /** 0 to 1. */
  readonly fraction: number;
  readonly says: string;
  readonly documentId?: string;
  /** The ledger's entry that came of it. */
  readonly entryId?: string;
  readonly refusal?: RefusalView;
}

/** A document that was made. */
export interface DocumentView {
  readonly id: string;
  readonly as: DocumentKind;
  readonly fileName: string;
  readonly at: string;
  readonly who: string;
  readonly sequence: number;
  readonly bytes: number;
  readonly numbers: readonly { readonly ledgerEntry: string; readonly path: string; readonly text: string }[];
}

/** A computation by name, with its method page as text (Markdown). */
export interface TopicView {
  readonly name: string;
  readonly version: number;
  readonly summary: string;
  readonly method: string;
  readonly sources: readonly {
    readonly id: string;
    readonly reference: string;
    readonly verification: "seen" | "memory";
  }[];
}

/** The canals and roots that may hide in a tooth and that somebody counted. */
export interface HiddenView {
  readonly tooth: string;
  readonly features: readonly FeatureView[];
}

/** One of them: the chance in the next population, and every published count. */
export interface FeatureView {
  readonly feature: BodyOf<"search">["feature"];
  /** As a sentence names it: `a second canal in the mesiobuccal root`. */
  readonly is: string;
  readonly prior: ChanceView;
  readonly series: readonly (ChanceView & {
    readonly region: string;
    readonly n: number;
    readonly N: number;
    readonly reference: string;
    readonly verification: "seen" | "memory";
    /** Its teeth are counted in a wider series of the same list. */
    readonly within: boolean;
  })[];
}

/** A chance with its interval. */
export interface ChanceView {
  readonly mean: number;
  readonly interval: Interval;
}

/** A refusal as it goes over the API. */
export interface RefusalView {
  readonly code: RefusalCode | "bug";
  readonly message: string;
  readonly facts: Readonly<Record<string, unknown>>;
  readonly faults: readonly Fault[];
}

/** The calibration room: how large an exercise is, which were done, and the click error that sums use now. */
export interface CalibrationView {
  readonly films: number;
  /** Marks of one exercise: every place twice. */
  readonly marks: number;
  readonly clickSigma: { readonly px: number; readonly from?: Settings["clickSigmaFrom"] };
  /** Newest first. */
  readonly exercises: readonly ExerciseLine[];
}

/** An exercise in a list. */
export type ExerciseLine = Omit<Exercise, "films" | "marks" | "seed"> & { readonly marked: number };

/** An exercise while it is done and after: what is shown in which order, and where was marked; never the true places. */
export type ExerciseView = Omit<Exercise, "films" | "marks"> & {
  readonly steps: readonly ExerciseStepView[];
  readonly marks: readonly { readonly at: readonly [number, number]; readonly by: "pointer" | "keyboard" }[];
};

/** One showing of a film. */
export interface ExerciseStepView extends Pick<CalibrationFilm, "tooth" | "columns" | "rows" | "uRunsTo"> {
  readonly film: string;
  readonly round: 1 | 2;
  readonly mirrored: boolean;
  readonly places: readonly { readonly kind: PlaceKind; readonly says: string }[];
}

/** A mark as the window gives it: its number (0 for the first) says of what it is. */
export const newExerciseMarkSchema = exerciseMarkSchema
  .pick({ at: true, by: true, zoom: true })
  .extend({ number: z.int().min(0).max(400) });
/** See {@link newExerciseMarkSchema}. */
export type NewExerciseMark = z.infer<typeof newExerciseMarkSchema>;
/** The last mark by its number, to be taken back. */
export const takenBackSchema = z.strictObject({ number: z.int().min(0).max(400) });
/** Which error of an exercise is used from now on. */
export const useOfExerciseSchema = z.strictObject({ which: z.enum(["all", "without"]) });
