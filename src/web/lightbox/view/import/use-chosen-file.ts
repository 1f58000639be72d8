import { useEffect, useState } from "react";
import { refusedFile } from "../../kernels/import-query.ts";
import { RefusedByWorker } from "../../workers/worker-line.ts";
import { type FilmPixelsState, openBytes, startPixels } from "../use-film-pixels.ts";

/** The picture in a chosen file, decoded beside the screen as the server will decode it. */
export function useChosenFile(file: File): FilmPixelsState {
  const [state, setState] = useState<FilmPixelsState>({ is: "loading" });
  useEffect(() => {
    const refused = refusedFile(file);
    if (refused !== undefined) return setState({ is: "refused", code: "file.tooLarge", says: refused });
    const line = startPixels();
    let left = false;
    setState({ is: "loading" });
    file
      .arrayBuffer()
      .then((bytes) => openBytes(bytes, file.name, line))
      .then(
        (opened) => !left && setState(opened),
        (error: unknown) => !left && setState(refusedBy(error, file.name)),
      );
    return () => {
      left = true;
      line.close();
    };
  }, [file]);
  return state;
}

function refusedBy(error: unknown, name: string): FilmPixelsState {
  if (error instanceof RefusedByWorker) return { is: "refused", code: error.code, says: error.message };
  return { is: "refused", code: "file.missing", says: `Cannot read ${name}: it is no longer there; choose it again` };
}
