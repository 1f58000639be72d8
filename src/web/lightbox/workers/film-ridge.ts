import type { ImagePoint } from "../../../core/units.ts";
import type { Polarity } from "../tools/tool-step.ts";
import { FilmPaths } from "./film-paths.ts";
import type { OpenedFilm } from "./pixels-messages.ts";
import type { RidgeAnswer, RidgeQuestion } from "./ridge-messages.ts";
import { WorkerLine } from "./worker-line.ts";

/** How far the ridge picture of a film is, for dark and for bright lines. */
export type RidgeState = Readonly<Partial<Record<Polarity, number>>>;

/** A place from which paths are wanted, along dark or bright lines. */
export interface WantedPaths {
  readonly from: ImagePoint;
  readonly polarity: Polarity;
}

/** The ridge picture of one film and the paths over it, computed aside from the screen. */
export class FilmRidge {
  readonly paths: FilmPaths;
  readonly #line: WorkerLine<RidgeQuestion, RidgeAnswer>;
  readonly #pending = new Set<string>();
  #wanted: readonly WantedPaths[] = [];
  #closed = false;

  constructor(
    worker: Worker,
    film: OpenedFilm,
    samples: Uint16Array,
    private readonly tell: {
      readonly progress: (polarity: Polarity, fraction: number) => void;
      readonly found: () => void;
      readonly failed: (says: string) => void;
    },
  ) {
    this.paths = new FilmPaths(film.columns, film.rows);
    this.#line = new WorkerLine(worker, (news) => {
      if (news.is === "progress") this.tell.progress(news.polarity, news.fraction * 0.99);
    });
    void this.#ask({ ask: "open", film, samples }, [samples.buffer]);
  }

  /** Makes the ridge picture of dark or bright lines. */
  async prepare(polarity: Polarity): Promise<void> {
    const answer = await this.#ask({ ask: "ridge", polarity });
    if (answer?.is !== "ready") return;
    measured(`light box: ridge, ${polarity}`, answer.milliseconds);
    this.tell.progress(polarity, 1);
  }

  /** Grows the trees that are wanted and not known yet: near their start first, then over the whole film. */
  want(wanted: readonly WantedPaths[]): void {
    this.#wanted = wanted;
    for (const one of wanted) {
      const key = this.#keyOf(one);
      if (this.#pending.has(key) || this.paths.treeFrom(one.polarity, one.from) !== undefined) continue;
      this.#pending.add(key);
      void this.#grow(one, key);
    }
  }

  /** Ends the work. */
  close(): void {
    this.#closed = true;
    this.#line.close();
  }

  async #grow(one: WantedPaths, key: string): Promise<void> {
    await this.#tree(one, "near");
    // A start that has been left meanwhile needs no more than that.
    if (!this.#closed && this.#wanted.some((still) => this.#keyOf(still) === key)) await this.#tree(one, "whole");
    this.#pending.delete(key);
  }

  async #tree({ from, polarity }: WantedPaths, reach: "near" | "whole"): Promise<void> {
    const answer = await this.#ask({ ask: "tree", start: this.paths.indexOf(from), polarity, reach });
    if (answer?.is !== "tree" || this.#closed) return;
    measured(`light box: tree, ${reach}`, answer.milliseconds);
    this.paths.keep(polarity, answer.tree);
    this.tell.found();
  }

  async #ask(question: RidgeQuestion, handedOver: Transferable[] = []): Promise<RidgeAnswer | undefined> {
    try {
      return await this.#line.ask(question, handedOver);
    } catch (error) {
      if (!this.#closed) this.tell.failed(error instanceof Error ? error.message : String(error));
      return undefined;
    }
  }

  #keyOf = ({ from, polarity }: WantedPaths): string => `${polarity} ${this.paths.indexOf(from)}`;
}

/** Leaves a time where a browser's own instruments find it. */
const measured = (name: string, duration: number): unknown =>
  performance.measure(name, { start: performance.now() - duration, duration });
