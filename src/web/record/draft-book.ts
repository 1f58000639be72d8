import type { Fault } from "../../core/refusal.ts";
import type { CabinetItem } from "../../record/cabinet/cabinet-item.ts";
import type { Operation } from "../../record/change.ts";
import type { Part } from "../../record/parts.ts";
import { Refused } from "./api.ts";
import { placeOfFault } from "./body-path.ts";

/** What is written in: a part of a case, or an item of the cabinet. */
export type Editable = Part | CabinetItem;

/** A part as the person is writing it, before the record has it. */
export interface Draft {
  readonly kind: Editable["kind"];
  readonly body: unknown;
  /** The revision that the person saw when they began. */
  readonly baseRevision: number;
  /** What was done so far, as `cold of 26 none`. */
  readonly said: readonly string[];
  /** What the record refused in it; paths are places of the body. */
  readonly faults: readonly Fault[];
}

/** The part that is written in, and the words that its gestures begin with. */
export interface Written {
  readonly part: Editable;
  readonly title: string;
}

const longestGesture = 200;
const idleMilliseconds = 2_000;

/** The drafts of one case, or of the cabinet: what has been typed and is not yet a finished gesture, or was refused. They outlive the page. */
export class DraftBook {
  readonly #drafts = new Map<string, Draft>();
  readonly #titles = new Map<string, string>();
  readonly #clocks = new Map<string, ReturnType<typeof setTimeout>>();
  readonly #watchers = new Set<() => void>();
  #count = 0;

  constructor(private readonly queue: { put: (words: string, operations: readonly Operation[]) => Promise<unknown> }) {}

  watch = (watcher: () => void): (() => void) => {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  };

  of = (partId: string): Draft | undefined => this.#drafts.get(partId);

  /** Rises with every change, so that a view can follow. */
  count = (): number => this.#count;

  /** Whether something typed has not been handed to the record. */
  get pending(): boolean {
    return [...this.#drafts.values()].some(({ said }) => said.length > 0);
  }

  /** Notes a change of a body; it becomes a gesture at {@link commit} or after two idle seconds. */
  write({ part, title }: Written, change: (body: unknown) => unknown, says: string): void {
    const draft = this.#drafts.get(part.id);
    const said = [...(draft?.said ?? []).filter((one) => aboutOf(one) !== aboutOf(says)), says];
    const body = change(draft?.body ?? part.body);
    const baseRevision = draft && draft.said.length > 0 ? draft.baseRevision : part.revision;
    this.#titles.set(part.id, title);
    this.#keep(part.id, { kind: part.kind, body, baseRevision, said, faults: [] });
    clearTimeout(this.#clocks.get(part.id));
    this.#clocks.set(
      part.id,
      setTimeout(() => this.commit(part.id), idleMilliseconds),
    );
  }

  /** Hands a draft to the record as one gesture. */
  commit(partId: string): void {
    clearTimeout(this.#clocks.get(partId));
    const draft = this.#drafts.get(partId);
    if (draft === undefined || draft.said.length === 0) return;
    const { kind, body, baseRevision } = draft;
    this.#keep(partId, { ...draft, said: [] });
    this.queue
      .put(gestureWords(this.#titles.get(partId) ?? kind, draft.said), [
        { op: "put", id: partId, kind, baseRevision, body },
      ])
      .then(
        () => this.#settled(partId, body),
        (error: unknown) => this.#refused(partId, body, error),
      );
  }

  /** Hands every draft to the record. */
  commitAll(): void {
    for (const partId of this.#drafts.keys()) this.commit(partId);
  }

  #settled(partId: string, body: unknown): void {
    if (this.#drafts.get(partId)?.body !== body) return;
    this.#drafts.delete(partId);
    this.#tell();
  }

  #refused(partId: string, body: unknown, error: unknown): void {
    const draft = this.#drafts.get(partId);
    if (draft === undefined) return;
    if (error instanceof Refused && error.code === "record.conflict") {
      this.#settled(partId, body);
      return;
    }
    const faults = error instanceof Refused ? error.faults : [];
    this.#keep(partId, { ...draft, faults: faults.map(({ path, says }) => ({ path: placeOfFault(path), says })) });
  }

  #keep(partId: string, draft: Draft): void {
    this.#drafts.set(partId, draft);
    this.#tell();
  }

  #tell(): void {
    this.#count += 1;
    for (const watcher of this.#watchers) watcher();
  }
}

/** What a saying is about, so that typing on in one field is one saying. */
const aboutOf = (says: string): string => says.split(": ")[0] ?? says;

/** A gesture's name: the page and what was done on it, shortened where it would run over. */
export function gestureWords(title: string, said: readonly string[]): string {
  const whole = `${title}: ${said.map((one) => one.replace(": ", " ")).join("; ")}`;
  if (whole.length <= longestGesture) return whole;
  const first = `${title}: ${said[0]?.replace(": ", " ") ?? ""}`.slice(0, longestGesture - 16).trimEnd();
  return said.length > 1 ? `${first}… and ${said.length - 1} more` : `${first}…`;
}
