/** Questions to a worker and its answers, each pair under one number; answers to questions that nobody waits for are dropped. */
export class WorkerLine<Question extends object, Answer extends object> {
  readonly #waiting = new Map<number, { take: (answer: Answer) => void; fail: (error: Error) => void }>();
  #next = 1;

  constructor(
    private readonly worker: Worker,
    private readonly told: (news: Answer) => void = () => undefined,
  ) {
    worker.onmessage = ({
      data,
    }: MessageEvent<{ line: number; answer?: Answer; news?: Answer; refused?: WorkerRefusal }>) => {
      if (data.news !== undefined) return this.told(data.news);
      const waiting = this.#waiting.get(data.line);
      this.#waiting.delete(data.line);
      if (data.refused !== undefined) waiting?.fail(new RefusedByWorker(data.refused));
      else if (data.answer !== undefined) waiting?.take(data.answer);
    };
    worker.onerror = ({ message }) => this.#failAll(message);
  }

  /** The answer to a question. Fails with {@link RefusedByWorker}. */
  ask(question: Question, handedOver: Transferable[] = []): Promise<Answer> {
    const line = this.#next++;
    return new Promise((take, fail) => {
      this.#waiting.set(line, { take, fail });
      this.worker.postMessage({ line, question }, handedOver);
    });
  }

  /** Ends the worker; what it still owed never comes. */
  close(): void {
    this.worker.terminate();
    this.#waiting.clear();
  }

  #failAll(message: string): void {
    const says = `Cannot go on with this film: its worker stopped (${message}); open it again`;
    for (const { fail } of this.#waiting.values()) fail(new RefusedByWorker({ code: "bug", message: says }));
    this.#waiting.clear();
  }
}

/** What a worker says no with. */
export interface WorkerRefusal {
  readonly code: string;
  readonly message: string;
}

/** A refusal that came over from a worker. */
export class RefusedByWorker extends Error {
  override readonly name = "RefusedByWorker";
  readonly code: string;
  constructor({ code, message }: WorkerRefusal) {
    super(message);
    this.code = code;
  }
}
