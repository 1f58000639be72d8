import { Worker } from "node:worker_threads";
import { inTurn } from "../store/in-turn.ts";

/** How long a thread may take, and how long it stays when nothing is left to do. */
export interface ThreadLimits {
  /** Answering one question, in ms. */
  readonly workMs: number;
  /** Staying without a question, in ms; absent: until it is ended. */
  readonly idleMs?: number;
  /** What a program's own objects may take, in MB; samples of films lie outside of it and are counted before. */
  readonly heapMb: number;
}

/** What went wrong with a question, as an error: takes what it was about, what the thread did, and what that came from. */
type OutOfHand = (about: string, what: string, cause?: unknown) => Error;

/** A thread that is started when it is asked, asked one thing at a time, and ended when it is idle or takes too long. */
export class Thread<Question, Answer> {
  readonly #turn = inTurn();
  #worker: Worker | undefined;
  #idle: NodeJS.Timeout | undefined;

  constructor(
    private readonly program: string,
    private readonly limits: ThreadLimits,
    private readonly outOfHand: OutOfHand,
  ) {}

  /**
   * The answer to one question. Takes the question and what it is about, for messages.
   * @throws what the thread was made with, where it takes too long, or ends over the question
   */
  ask(question: Question, about: string): Promise<Answer> {
    return this.#turn(async () => {
      clearTimeout(this.#idle);
      this.#worker ??= startedThread(this.program, this.limits.heapMb);
      try {
        return await this.#answered(this.#worker, question, about);
      } catch (failure) {
        await this.end();
        throw failure;
      } finally {
        const { idleMs } = this.limits;
        if (idleMs !== undefined) this.#idle = setTimeout(() => this.end(), idleMs).unref();
      }
    });
  }

  /** One answer of the thread; one that ends or takes too long gives up the question that it has in hand. */
  async #answered(worker: Worker, question: Question, about: string): Promise<Answer> {
    const { workMs } = this.limits;
    const done = new AbortController();
    const heard = new Promise<Answer>((take, fail) => {
      const end = (cause?: unknown) => fail(this.outOfHand(about, "took more memory than it may", cause));
      const late = setTimeout(() => fail(this.outOfHand(about, `took longer than ${workMs / 1000} s`)), workMs);
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
  // It keeps no process alive that has nothing else to do; and what it complains of when idle is nobody's question.
  worker.unref();
  worker.on("error", () => undefined);
  return worker;
}
