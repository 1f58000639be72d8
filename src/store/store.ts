import type { CaseId, FilmHash } from "../core/ids.ts";
import type { CabinetChange } from "../record/cabinet/cabinet-change.ts";
import type { CabinetGesture } from "../record/cabinet/cabinet-gesture.ts";
import type { CabinetStanding } from "../record/cabinet/cabinet-standing.ts";
import type { CaseFile } from "../record/case-file.ts";
import type { Change, Gesture } from "../record/change.ts";
import type { DueOfCase } from "../record/due.ts";
import type { Exercise } from "../record/exercise.ts";
import type { CaseFacts } from "../record/facts.ts";
import type { FileUseOfCase } from "../record/file-uses.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { Part } from "../record/parts.ts";
import type { Settings } from "../record/settings.ts";
import type { DocumentRow } from "./document-row.ts";
import type { DueAsked } from "./due-rows.ts";

/** A case as it stands, or stood, at one change. */
export interface CaseState {
  readonly caseId: CaseId;
  /** The last change that it includes. */
  readonly sequence: number;
  /** The hash of that change: the head of the chain. */
  readonly headHash: string;
  readonly parts: readonly Part[];
}

/** The cabinet as it stands. */
export type CabinetState = Omit<CabinetStanding, "revisions">;

/** What the ledger of a case rests on beside its parts. */
export interface LedgerGround {
  /** An entry that is worked out already. */
  readonly known: (id: string) => LedgerEntry | undefined;
  readonly settings: Settings;
}

/** How the ledger of a case is worked out. */
export interface DeriveLedger {
  /** Called inside the transaction, with what stands there. */
  (state: CaseState, ground: LedgerGround): readonly LedgerEntry[];
  /**
   * The same before the transaction, from what will stand as far as can be foreseen: what it gives is known inside, and
   * what has changed meanwhile is worked out there. Absent: all is worked out inside.
   */
  readonly ahead?: (state: CaseState, ground: LedgerGround) => Promise<readonly LedgerEntry[]>;
}

/** Who records, when, and how the ledger follows. */
export interface Recording {
  readonly who: string;
  readonly at: string;
  readonly deriveLedger: DeriveLedger;
}

/** What stays of a case that was removed. */
export interface Tombstone {
  readonly caseId: string;
  readonly headHash: string;
  readonly at: string;
  readonly who: string;
}

/** One thing that is wrong with what is stored. */
export interface StoreFault {
  readonly what:
    | "chain"
    | "state"
    | "facts"
    | "ledger"
    | "film"
    | "document"
    | "settings"
    | "exercise"
    | "cabinet"
    | "tombstone"
    | "schema";
  readonly where: string;
  readonly says: string;
}

/** A kept film that no change ever named. */
export interface UnusedFilm {
  readonly hash: string;
  readonly bytes: number;
  readonly keptAt: string;
}

/** The record on disk, whichever database serves it. Every write is one transaction: chain, state, facts and ledger together. */
export interface Store {
  settings(): Promise<Settings>;
  /** Where sums rest on what changes, all ledgers are behind from then on. @throws Refusal `input.invalid` */
  writeSettings(settings: Settings): Promise<void>;
  /** Names the settings that ledgers have not all followed yet; undefined where they have. */
  ledgersBehind(): Promise<string | undefined>;
  /** Notes that all ledgers have followed the settings of that name; nothing where others came meanwhile. */
  noteLedgersFollow(behind: string): Promise<void>;
  /** Names the sums by which all ledgers were worked out last; undefined where no program noted it. */
  ledgerSums(): Promise<string | undefined>;
  /** Notes by which sums all ledgers are worked out now. */
  noteLedgerSums(done: string): Promise<void>;

  /** All exercises, newest first. @throws Refusal `store.corrupt` */
  exercises(): Promise<Exercise[]>;
  /** @throws Refusal `record.notFound`, `store.corrupt` */
  exercise(id: string): Promise<Exercise>;
  /** Keeps a new exercise; one of a kind can be under way. @throws Refusal `record.conflict`, `input.invalid` */
  beginExercise(exercise: Exercise): Promise<Exercise>;
  /** Changes an exercise that is under way, from how it stands. @throws Refusal `record.notFound`, `record.conflict` */
  changeExercise(id: string, change: (stood: Exercise) => Exercise): Promise<Exercise>;
  /** Takes away an exercise that is under way. @throws Refusal `record.notFound`, `record.conflict` */
  removeExercise(id: string): Promise<void>;

  /** The clinic's cabinet; empty before its first change. */
  cabinet(): Promise<CabinetState>;
  /** The chain of the cabinet, first change first. */
  cabinetChanges(): Promise<CabinetChange[]>;
  /**
   * Records a gesture on the cabinet. A counted file stays and is refused to be taken out, but where the demo as a whole goes.
   * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`
   */
  recordInCabinet(
    gesture: CabinetGesture,
    recorder: Pick<Recording, "who" | "at">,
    counted?: "stays" | "goes",
  ): Promise<CabinetState>;
  /** Takes back the change at the top of the cabinet's history. @throws Refusal `record.nothingToUndo`, `record.conflict` */
  undoInCabinet(recorder: Pick<Recording, "who" | "at">, seen?: number): Promise<CabinetState>;
  /** Takes back the undo at the top. @throws Refusal `record.nothingToUndo`, `record.conflict` */
  redoInCabinet(recorder: Pick<Recording, "who" | "at">, seen?: number): Promise<CabinetState>;
  /** The uses of counted files in all cases. */
  fileUses(): Promise<FileUseOfCase[]>;
  /** The entries of one topic that hold now in the cases that used a counted file. */
  entriesOfFileUsers(topic: string): Promise<LedgerEntry[]>;

  /** What is due in all cases, by day. */
  due(asked: DueAsked): Promise<DueOfCase[]>;

  /** Facts of all cases, newest first. */
  cases(): Promise<CaseFacts[]>;
  /** @throws Refusal `record.notFound` */
  readCase(caseId: string): Promise<CaseState>;
  /** The case as it stood at a change. @throws Refusal `record.notFound`, `store.brokenChain` */
  readCaseAt(caseId: string, sequence: number): Promise<CaseState>;
  /** The chain of a case, first change first. */
  changes(caseId: string): Promise<Change[]>;
  /** A new case whose first change is this gesture. @throws Refusal `input.invalid`, `record.conflict` when the id is taken */
  createCase(caseId: string, gesture: Gesture, recording: Recording): Promise<CaseState>;
  /** @throws Refusal `input.invalid`, `record.conflict`, `record.notFound` */
  record(caseId: string, gesture: Gesture, recording: Recording): Promise<CaseState>;
  /**
   * Takes back the change at the top of the history; the first change is never taken back. `seen` is the change that the
   * person believes to be at the top. @throws Refusal `record.nothingToUndo`, `record.conflict`
   */
  undo(caseId: string, recording: Recording, seen?: number): Promise<CaseState>;
  /** Takes back the undo at the top. @throws Refusal `record.nothingToUndo`, `record.conflict` */
  redo(caseId: string, recording: Recording, seen?: number): Promise<CaseState>;
  /**
   * Records a case file as a new case: each gesture with its own moment and writer, the ledger once at the end. Films are
   * bytes by their hash; those that are kept already may be left out.
   * @throws Refusal `input.invalid`, `input.impossible`, `record.conflict`, `file.missing`
   */
  loadCaseFile(file: CaseFile, films: ReadonlyMap<string, Uint8Array>, deriveLedger: DeriveLedger): Promise<CaseState>;
  /** Removes a case and leaves a tombstone; films that no other case names go with it. */
  removeCase(caseId: string, recording: Pick<Recording, "who" | "at">): Promise<Tombstone>;
  /** What stays of the cases that were removed, oldest first. */
  tombstones(): Promise<Tombstone[]>;

  /** The entries that hold for the case now. */
  ledger(caseId: string): Promise<LedgerEntry[]>;
  /** Every entry that was ever kept for a case, whether it holds or not. */
  keptLedger(caseId: string): Promise<LedgerEntry[]>;
  /** One entry, current or not. @throws Refusal `record.notFound` */
  ledgerEntry(id: string): Promise<LedgerEntry>;
  /** Works the ledger of a case out anew (after a setting or a topic changed). */
  refreshLedger(caseId: string, deriveLedger: DeriveLedger): Promise<void>;

  /** Keeps a film's bytes once, by content; gives their hash. Written to a temporary name, flushed, renamed. */
  keepFilm(bytes: Uint8Array): Promise<FilmHash>;
  /** @throws Refusal `record.notFound` */
  readFilm(hash: string): Promise<Uint8Array>;

  /** The kept films that no change of any case ever named, oldest first. */
  unusedFilms(): Promise<UnusedFilm[]>;
  /** Takes those away; gives them. @throws Refusal `server.alreadyRunning` unless this store holds its home */
  removeUnusedFilms(): Promise<UnusedFilm[]>;

  /** Keeps a finished document and its row. */
  keepDocument(row: Omit<DocumentRow, "sha256" | "bytes">, bytes: Uint8Array): Promise<DocumentRow>;
  documents(caseId: string): Promise<DocumentRow[]>;
  /** @throws Refusal `record.notFound` */
  readDocument(id: string): Promise<{ row: DocumentRow; bytes: Uint8Array }>;

  /** Everything that is wrong: chains, states against their chains, facts against states, files against rows. */
  verify(progress?: (done: number, all: number) => void): Promise<StoreFault[]>;
  close(): Promise<void>;
}
