import { Worker } from "node:worker_threads";
import { Refusal } from "../core/refusal.ts";
import { inTurn } from "../store/in-turn.ts";
import type { FilmAnswer, FilmQuestion } from "./film-questions.ts";

/** How long a thread may take, and how long it stays when nothing is left to do. */
export interface ThreadLimits {
  /** Reading one film, in ms. */
  readonly workMs: number;
  /** A codec keeps the memory of its largest picture, so an idle thread is not kept for long; in ms. */
  readonly idleMs: number;
  /** What a program's own objects may take, in MB; samples lie outside of it and are counted before. */
  readonly heapMb: number;
}

/** A thread that is started when it is asked, asked one thing at a time, and ended when it is idle or takes too long. */
export class FilmThread {
  readonly #turn = inTurn();
  #worker: Worker | undefined;
  #idle: NodeJS.Timeout | undefined;

  constructor(
    private readonly program: string,
    private readonly limits: ThreadLimits,
  ) {}

  /**
   * The answer to one question. Takes the question and the name of the file, for messages.
   * @throws Refusal `file.tooLarge` where the thread takes too long, or ends over the film
   */
  ask(question: FilmQuestion, name: string): Promise<FilmAnswer> {
    return this.#turn(async () => {
      clearTimeout(this.#idle);
      this.#worker ??= startedThread(this.program, this.limits.heapMb);
      try {
        return await answered(this.#worker, question, { name, workMs: this.limits.workMs });
      } catch (failure) {
        await this.end();
        throw failure;
      } finally {
        this.#idle = setTimeout(() => this.end(), this.limits.idleMs).unref();
      }
    });
  }

  /** Ends the thread; what it has in hand is refused. */
  async end(): Promise<void> {
    clearTimeout(this.#idle);
    const ended = this.#worker;
    this.#worker = undefined;
    await ended?.terminate();
  }
}

function startedThread(program: string, heapMb: number): Worker {
  const worker = new Worker(program, { resourceLimits: { maxOldGenerationSizeMb: heapMb } });
  // It keeps no process alive that has nothing else to do; and what it complains of when idle is nobody's film.
  worker.unref();
  worker.on("error", () => undefined);
  return worker;
}

/** One answer of a thread; one that ends or takes too long refuses the film it has in hand. */
async function answered(
  worker: Worker,
  question: FilmQuestion,
  { name, workMs }: { name: string; workMs: number },
): Promise<FilmAnswer> {
  const done = new AbortController();
  const heard = new Promise<FilmAnswer>((take, fail) => {
    const end = (cause?: unknown) => fail(tooLarge(name, "took more memory than one film may", cause));
    const late = setTimeout(() => fail(tooLarge(name, `took longer than ${workMs / 1000} s`)), workMs);
    const listeners = { message: take, error: end, exit: () => end() };
    for (const [event, listener] of Object.entries(listeners)) worker.on(event, listener);
    done.signal.addEventListener("abort", () => {
      clearTimeout(late);
      for (const [event, listener] of Object.entries(listeners)) worker.off(event, listener);
    });
  });
  try {
    worker.postMessage(question);
    return await heard;
  } finally {
    done.abort();
  }
}

function tooLarge(name: string, what: string, cause?: unknown): Refusal {
  const says = `Cannot read ${name}: it ${what}; export a smaller part or a lower resolution`;
  const refusal = new Refusal("file.tooLarge", says, { file: name });
  refusal.cause = cause;
  return refusal;
}
