import { Worker } from "node:worker_threads";
import { Refusal } from "../../core/refusal.ts";
import { type ExportProgress, type MakeDocument, makeDocument } from "../../export/make-document.ts";
import type { ExportPlace } from "../../export/pictures.ts";
import type { PageModel } from "../../pages/page-model.ts";
import { inTurn } from "../../store/in-turn.ts";
import type { DocumentMessage, DocumentToMake, FilmHandedOver } from "./document-messages.ts";

/** Makes documents, and ends what is under way. */
export interface Documents {
  /** @throws Refusal `export.failed`, and what reading a film refuses */
  readonly make: MakeDocument;
  readonly close: () => Promise<void>;
}

/** Documents made where they are asked for: by a command that serves nobody else. */
export const documentsHere: Documents = { make: makeDocument, close: async () => undefined };

/**
 * Documents made in a thread of their own, one at a time: the server answers others meanwhile.
 * Takes the thread's program as it was built.
 */
export function documentsAside(program: string): Documents {
  const turn = inTurn();
  const closing = new AbortController();
  const make: MakeDocument = (model, place, progress) =>
    turn(async () => {
      const workerData: DocumentToMake = { model, fontsFolder: place.fontsFolder };
      const worker = new Worker(program, { workerData });
      try {
        return await madeBy(worker, { model, place, progress }, closing.signal);
      } finally {
        await worker.terminate();
      }
    });
  return { make, close: async () => closing.abort() };
}

interface Asked {
  readonly model: PageModel;
  readonly place: ExportPlace;
  readonly progress: ExportProgress;
}

function madeBy(worker: Worker, { model, place, progress }: Asked, closing: AbortSignal): Promise<Uint8Array> {
  return new Promise((take, fail) => {
    const failed = (why: string) => fail(notMade(model.as, why));
    const ends = () => failed("the program ends");
    if (closing.aborted) ends();
    closing.addEventListener("abort", ends);
    worker.on("exit", () => closing.removeEventListener("abort", ends));
    worker.on("error", (cause) => failed(cause instanceof Error ? cause.message : String(cause)));
    worker.on("exit", () => failed("its thread ended"));
    worker.on("message", (message: DocumentMessage) => {
      if (message.is === "progress") progress(message.fraction, message.says);
      else if (message.is === "made") take(message.bytes);
      else if (message.is === "refused") fail(new Refusal(message.code, message.message));
      else handOver(worker, message.name, place).catch(fail);
    });
  });
}

async function handOver(worker: Worker, name: string, place: ExportPlace): Promise<void> {
  const film: FilmHandedOver = { name, bytes: await place.readFilm(name) };
  worker.postMessage(film);
}

const notMade = (as: PageModel["as"], why: string): Refusal =>
  new Refusal("export.failed", `Cannot make the ${as}: ${why}; nothing was kept, try again`);
