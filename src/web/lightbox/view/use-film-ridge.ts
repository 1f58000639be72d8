import { useEffect, useRef, useState } from "react";
import type { Polarity } from "../tools/tool-step.ts";
import { FilmRidge, type RidgeState, type WantedPaths } from "../workers/film-ridge.ts";
import type { FilmPixelsState } from "./use-film-pixels.ts";

/** The ridge picture of the film on the box: how far it is, and paths over it. */
export interface RidgeUse {
  readonly state: RidgeState;
  readonly ridge: FilmRidge | undefined;
  readonly want: (wanted: readonly WantedPaths[]) => void;
}

/** Makes the ridge picture as soon as a film is open, for the lines that are traced now; tells when paths are found. */
export function useFilmRidge(
  pixels: FilmPixelsState,
  polarity: Polarity,
  on: { found: () => void; failed: (says: string) => void },
): RidgeUse {
  const [state, setState] = useState<RidgeState>({});
  const [ridge, setRidge] = useState<FilmRidge>();
  const told = useRef(on);
  told.current = on;
  useEffect(() => {
    setState({});
    setRidge(undefined);
    if (pixels.is !== "open") return;
    let opened: FilmRidge | undefined;
    let left = false;
    void openRidge(pixels, {
      progress: (line, fraction) => setState((before) => ({ ...before, [line]: fraction })),
      found: () => told.current.found(),
      failed: (says) => told.current.failed(says),
    }).then((made) => {
      if (left) return made?.close();
      opened = made;
      setRidge(made);
    });
    return () => {
      left = true;
      opened?.close();
    };
  }, [pixels]);
  useEffect(() => void ridge?.prepare(polarity), [ridge, polarity]);
  return { state, ridge, want: (wanted) => ridge?.want(wanted) };
}

async function openRidge(
  { film, line }: Extract<FilmPixelsState, { is: "open" }>,
  tell: ConstructorParameters<typeof FilmRidge>[3],
): Promise<FilmRidge | undefined> {
  const answer = await line.ask({ ask: "samples" }).catch(() => undefined);
  if (answer?.is !== "samples") return undefined;
  const worker = new Worker(new URL("../workers/ridge-worker.ts", import.meta.url), { type: "module" });
  return new FilmRidge(worker, film, answer.samples, tell);
}
