import type { ExerciseView, NewExerciseMark } from "../../server/api.ts";
import { Refused } from "./api.ts";

type Mark = ExerciseView["marks"][number];

/** One thing that was done to an exercise: a mark more, or the last mark taken back. */
export type ExerciseAct =
  | { readonly do: "mark"; readonly mark: Omit<NewExerciseMark, "number"> }
  | { readonly do: "takeBack" };

/** How the exercise stands towards what was done. */
export type ExerciseSaving =
  | { readonly is: "quiet" | "saving" }
  | { readonly is: "failed"; readonly error: Refused; readonly retries: boolean };

/** How an act is sent, with the number of the mark that it is about; who takes the answer; who hears of a change. */
export interface ExerciseWorld {
  readonly send: (act: ExerciseAct, number: number) => Promise<ExerciseView>;
  readonly take: (view: ExerciseView) => void;
}

/**
 * The acts of an exercise on their way to the record: one at a time, in order. One that can't be sent waits with all behind
 * it until it is tried again; where the record refuses one, it and what was done after it are dropped, for they rest on it.
 */
export class ExerciseQueue {
  #waiting: readonly ExerciseAct[] = [];
  #saving: ExerciseSaving = { is: "quiet" };
  #sending = false;
  readonly #watchers = new Set<() => void>();

  constructor(private readonly world: ExerciseWorld) {}

  /** How it stands; the same value until something changes. */
  readonly now = (): ExerciseSaving => this.#saving;

  readonly watch = (watcher: () => void): (() => void) => {
    this.#watchers.add(watcher);
    return () => this.#watchers.delete(watcher);
  };

  /** The marks as they will stand once all that waits is recorded. */
  over(marks: readonly Mark[]): readonly Mark[] {
    return this.#waiting.reduce(withAct, marks);
  }

  /** Takes an act; `marked` is how many marks the record has now. */
  put(act: ExerciseAct, marked: number): void {
    this.#waiting = [...this.#waiting, act];
    void this.#next(marked);
    this.#tell(this.#saving.is === "failed" ? this.#saving : { is: "saving" });
  }

  /** Sends again what could not be sent. */
  retry(marked: number): void {
    void this.#next(marked);
  }

  async #next(marked: number): Promise<void> {
    const [act] = this.#waiting;
    if (act === undefined || this.#sending) return;
    this.#sending = true;
    try {
      const view = await this.world.send(act, act.do === "mark" ? marked : marked - 1);
      this.#waiting = this.#waiting.slice(1);
      this.#sending = false;
      this.world.take(view);
      this.#tell({ is: this.#waiting.length === 0 ? "quiet" : "saving" });
      await this.#next(view.marks.length);
    } catch (error) {
      this.#sending = false;
      this.#fail(error);
    }
  }

  #fail(thrown: unknown): void {
    const error = thrown instanceof Refused ? thrown : new Refused("bug", String(thrown));
    const retries = error.code === "unreachable" || error.code.startsWith("store.");
    if (!retries) this.#waiting = [];
    this.#tell({ is: "failed", error, retries });
  }

  #tell(saving: ExerciseSaving): void {
    // Told by a new value each time: what lies over the marks has changed even where the words have not.
    this.#saving = { ...saving };
    for (const watcher of this.#watchers) watcher();
  }
}

const withAct = (marks: readonly Mark[], act: ExerciseAct): readonly Mark[] =>
  act.do === "takeBack" ? marks.slice(0, -1) : [...marks, { at: act.mark.at, by: act.mark.by }];
