import { useEffect, useState } from "react";
import type { OpenedFilm, PixelsAnswer, PixelsQuestion } from "../workers/pixels-messages.ts";
import { RefusedByWorker, WorkerLine } from "../workers/worker-line.ts";

/** The line to a worker that holds one film's pixels. */
export type PixelsLine = WorkerLine<PixelsQuestion, PixelsAnswer>;

/** A film's pixels on their way to the screen. */
export type FilmPixelsState =
  | { readonly is: "loading" }
  | { readonly is: "refused"; readonly code: string; readonly says: string }
  | { readonly is: "open"; readonly film: OpenedFilm; readonly line: PixelsLine };

/** A worker that decodes and draws one film. */
export const startPixels = (): PixelsLine =>
  new WorkerLine(new Worker(new URL("../workers/pixels-worker.ts", import.meta.url), { type: "module" }));

/** The pixels of a kept film, decoded beside the screen; a new film ends the worker of the one before. */
export const useFilmPixels = (hash: string): FilmPixelsState => usePixelsAt(`/api/films/${hash}`);

/** The pixels of a picture that the program gives under an address. */
export function usePixelsAt(address: string): FilmPixelsState {
  const [state, setState] = useState<FilmPixelsState>({ is: "loading" });
  useEffect(() => {
    const line = startPixels();
    const away = new AbortController();
    setState({ is: "loading" });
    openKept(address, line, away.signal).then(
      (opened) => !away.signal.aborted && setState(opened),
      (error: unknown) => !away.signal.aborted && setState(refusedBy(error)),
    );
    return () => {
      away.abort();
      line.close();
    };
  }, [address]);
  return state;
}

async function openKept(address: string, line: PixelsLine, signal: AbortSignal): Promise<FilmPixelsState> {
  const response = await fetch(address, { signal });
  if (!response.ok) return refusedAnswer(response);
  return openBytes(await response.arrayBuffer(), "this film", line);
}

/** The film in a file's bytes, opened in a worker. Fails with {@link RefusedByWorker}. */
export async function openBytes(bytes: ArrayBuffer, name: string, line: PixelsLine): Promise<FilmPixelsState> {
  const answer = await line.ask({ ask: "open", bytes, name }, [bytes]);
  if (answer.is !== "opened") return { is: "refused", code: "bug", says: "Cannot show this film: it did not open" };
  return { is: "open", film: answer.film, line };
}

async function refusedAnswer(response: Response): Promise<FilmPixelsState> {
  const fallback = `Cannot show this film: the program answered with status ${response.status}`;
  const answer: unknown = await response.json().catch(() => undefined);
  const message: unknown = typeof answer === "object" && answer !== null ? Reflect.get(answer, "message") : undefined;
  const code: unknown = typeof answer === "object" && answer !== null ? Reflect.get(answer, "code") : undefined;
  return {
    is: "refused",
    code: typeof code === "string" ? code : "bug",
    says: typeof message === "string" ? message : fallback,
  };
}

function refusedBy(error: unknown): FilmPixelsState {
  if (error instanceof RefusedByWorker) return { is: "refused", code: error.code, says: error.message };
  const says = "Cannot show this film: the program does not answer. Is it still running on this machine?";
  return { is: "refused", code: "unreachable", says };
}
