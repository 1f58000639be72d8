import { useEffect, useRef, useState } from "react";
import type { Polarity } from "../tools/tool-step.ts";
import { FilmRidge, type RidgeState, type WantedPaths } from "../workers/film-ridge.ts";
import type { FilmPixelsState } from "./use-film-pixels.ts";

/** The ridge picture of the film on the box: how far it is, and paths over it. */
export interface RidgeUse {
  readonly state: RidgeState;
  readonly ridge: FilmRidge | undefined;
  /** No lines can be followed on this film; the reason was said. */
  readonly failed: boolean;
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
  const [failed, setFailed] = useState(false);
  const told = useRef(on);
  told.current = on;
  useEffect(() => {
    setState({});
    setRidge(undefined);
    setFailed(false);
    if (pixels.is !== "open") return;
    let opened: FilmRidge | undefined;
    let left = false;
    void openRidge(pixels, {
      progress: (line, fraction) => setState((before) => ({ ...before, [line]: fraction })),
      found: () => told.current.found(),
      failed: (says) => {
        setFailed(true);
        told.current.failed(says);
      },
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
  // A course that waited for its paths goes on without them.
  useEffect(() => {
    if (failed) told.current.found();
  }, [failed]);
  return { state, ridge, failed, want: (wanted) => ridge?.want(wanted) };
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
