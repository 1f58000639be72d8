import type { Operation } from "../../record/change.ts";
import type { CaseView } from "../../server/api.ts";
import { Refused } from "./api.ts";

/** What a gesture changes: a part of a case, an item of the cabinet. */
export interface Held {
  readonly id: string;
  readonly kind: string;
  readonly revision: number;
  readonly body: unknown;
}

/** One thing that was changed in two places: what the person wanted and what stands, both whole; null where it is gone. */
export interface TwoVersions {
  readonly id: string;
  readonly kind: string;
  readonly yours: unknown;
  readonly theirs: Pick<Held, "revision" | "body"> | null;
}

/** How the record stands towards what the person did. */
export type SaveState =
  | { readonly is: "quiet" }
  | { readonly is: "saving" }
  | { readonly is: "saved"; readonly at: Date }
  | { readonly is: "failed"; readonly why: string; readonly words: string; readonly retries: boolean }
  | { readonly is: "conflict"; readonly words: string; readonly conflicts: readonly TwoVersions[] };

interface Waiting<View> {
  readonly words: string;
  readonly operations: readonly Operation[];
  readonly done: (view: View) => void;
  readonly failed: (error: unknown) => void;
}

/** What the queue needs from outside: how a gesture is sent, who takes the new view, who watches, and how time passes. */
export interface QueueWorld<View> {
  readonly send: (words: string, operations: readonly Operation[]) => Promise<View>;
  readonly take: (view: View) => void;
  /** What stands in a view, each with the number of its changes. */
  readonly heldIn: (view: View) => readonly Pick<Held, "id" | "revision">[];
  readonly now: () => Date;
  readonly later: (work: () => void, milliseconds: number) => void;
}

const waits = [1_500, 4_000, 10_000, 20_000] as const;

/**
 * The gestures of one case, or of the cabinet, on their way to the record: one at a time, in order. A gesture that can't be sent waits and is
 * tried again; one that is refused is handed back and the others go on; one in conflict stops the queue until the person chose.
 */
export class SaveQueue<View = CaseView> {
  #waiting: Waiting<View>[] = [];
  #sending = false;
  #tries = 0;
  #state: SaveState = { is: "quiet" };
  /** Where this window's own writes took a part: `part@old revision` to the new one. */
  readonly #moved = new Map<string, number>();
  readonly #watchers = new Set<() => void>();

  constructor(private readonly world: QueueWorld<View>) {}

  get state(): SaveState {
    return this.#state;
  }

  /** Whether anything has not reached the record yet. */
  get busy(): boolean {
    return this.#waiting.length > 0;
  }

  /** Kept once nothing is on its way: all is recorded, or what is left waits for the network or for the person. */
  settled(): Promise<void> {
    if (this.#isAtRest()) return Promise.resolve();
    return new Promise((done) => {
      const leave = this.watch(() => {
        if (!this.#isAtRest()) return;
        leave();
        done();
      });
    });
  }

  #isAtRest(): boolean {
    return !this.busy || this.#state.is === "conflict" || this.#state.is === "failed";
  }

  watch = (watcher: () => void): (() => void) => {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  };

  /** Takes a finished gesture; the promise holds what stands once it is recorded, or fails with what the record said. */
  put(words: string, operations: readonly Operation[]): Promise<View> {
    return new Promise((done, failed) => {
      this.#waiting = [...this.#waiting, { words, operations, done, failed }];
      // Whoever watches lays it over what stands at once; the next gesture would else be made without it.
      if (this.#sending || this.#state.is === "conflict") this.#tell({ ...this.#state });
      else this.#next();
    });
  }

  /** Parts or items as they will stand once all that waits is recorded. */
  over<Item extends Held>(items: readonly Item[]): readonly Item[] {
    return this.#waiting.flatMap(({ operations }) => operations).reduce(withOperation<Item>, items);
  }

  /** Sends again what could not be sent. */
  retry(): void {
    this.#next();
  }

  /** After a conflict: the person's choice for the first gesture in the queue; null lets the other version stand. */
  settle(operations: readonly Operation[] | null): void {
    const [first, ...rest] = this.#waiting;
    if (this.#state.is !== "conflict" || first === undefined) return;
    this.#state = { is: "saving" };
    if (operations !== null && operations.length > 0) this.#waiting = [{ ...first, operations }, ...rest];
    else {
      this.#waiting = rest;
      first.failed(new Refused("record.conflict", "The other version stands."));
    }
    this.#next();
  }

  #next(): void {
    const [first] = this.#waiting;
    if (this.#sending) return;
    if (first === undefined) {
      if (this.#state.is === "saving") this.#tell({ is: "quiet" });
      return;
    }
    this.#sending = true;
    this.#tell({ is: "saving" });
    const operations = first.operations.map((operation) => this.#onTop(operation));
    this.world.send(first.words, operations).then(
      (view) => this.#recorded(first, operations, view),
      (error: unknown) => this.#refused(first, error),
    );
  }

  #recorded(first: Waiting<View>, sent: readonly Operation[], view: View): void {
    for (const { id, baseRevision } of sent) {
      const now = this.world.heldIn(view).find((one) => one.id === id)?.revision;
      if (now !== undefined && now !== baseRevision) this.#moved.set(`${id}@${baseRevision}`, now);
    }
    this.#sending = false;
    this.#tries = 0;
    this.#waiting = this.#waiting.slice(1);
    this.world.take(view);
    first.done(view);
    if (this.#waiting.length === 0) this.#tell({ is: "saved", at: this.world.now() });
    else this.#next();
  }

  #refused(first: Waiting<View>, error: unknown): void {
    this.#sending = false;
    const { words } = first;
    const refused = error instanceof Refused ? error : new Refused("bug", String(error));
    const conflicts = conflictsOf(refused);
    if (refused.code === "unreachable") this.#wait(words, whyOf(refused));
    else if (conflicts.length > 0) this.#tell({ is: "conflict", words, conflicts });
    else this.#handBack(first, refused);
  }

  #handBack(first: Waiting<View>, refused: Refused): void {
    this.#waiting = this.#waiting.slice(1);
    first.failed(refused);
    if (this.#waiting.length > 0) this.#next();
    else this.#tell({ is: "failed", why: whyOf(refused), words: first.words, retries: false });
  }

  #wait(words: string, why: string): void {
    this.#tell({ is: "failed", why, words, retries: true });
    const wait = waits[Math.min(this.#tries, waits.length - 1)] ?? 20_000;
    this.#tries += 1;
    this.world.later(() => this.#next(), wait);
  }

  /** An operation on top of this window's own earlier writes, which are no one else's change. */
  #onTop(operation: Operation): Operation {
    let { baseRevision } = operation;
    let next = this.#moved.get(`${operation.id}@${baseRevision}`);
    while (next !== undefined) {
      baseRevision = next;
      next = this.#moved.get(`${operation.id}@${baseRevision}`);
    }
    return { ...operation, baseRevision };
  }

  #tell(state: SaveState): void {
    this.#state = state;
    for (const watcher of this.#watchers) watcher();
  }
}

function withOperation<Item extends Held>(items: readonly Item[], operation: Operation): readonly Item[] {
  if (operation.op === "remove") return items.filter(({ id }) => id !== operation.id);
  const standing = items.find(({ id }) => id === operation.id);
  const item = {
    id: operation.id,
    kind: operation.kind,
    revision: standing?.revision ?? 0,
    body: operation.body,
  } as Item;
  return standing ? items.map((one) => (one.id === operation.id ? item : one)) : [...items, item];
}

function conflictsOf(refused: Refused): readonly TwoVersions[] {
  const conflicts: unknown = refused.facts.conflicts;
  return refused.code === "record.conflict" && Array.isArray(conflicts) ? conflicts : [];
}

const whyOf = ({ message, faults }: Refused): string =>
  faults.length === 0 ? message : `${faults.map(({ says }) => says).join("; ")}.`;
