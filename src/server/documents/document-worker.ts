import { parentPort, workerData } from "node:worker_threads";
import { Refusal } from "../../core/refusal.ts";
import { makeDocument } from "../../export/make-document.ts";
import type { DocumentMessage, DocumentToMake, FilmHandedOver } from "./document-messages.ts";

/** The thread beside the server: makes the document that it is started with, asking for one film after the other. */
const { model, fontsFolder } = workerData as DocumentToMake;
const wanted = new Map<string, (bytes: Uint8Array) => void>();
const say = (message: DocumentMessage): void => parentPort?.postMessage(message);

parentPort?.on("message", ({ name, bytes }: FilmHandedOver) => wanted.get(name)?.(bytes));

const readFilm = (name: string): Promise<Uint8Array> =>
  new Promise((take) => {
    wanted.set(name, take);
    say({ is: "wants", name });
  });

try {
  const bytes = await makeDocument(model, { readFilm, fontsFolder }, (fraction, says) =>
    say({ is: "progress", fraction, says }),
  );
  say({ is: "made", bytes });
} catch (thrown) {
  if (!(thrown instanceof Refusal)) throw thrown;
  say({ is: "refused", code: thrown.code, message: thrown.message });
}
