import { Button } from "../../parts/button.tsx";
import { timeInWords } from "../../parts/days-in-words.ts";
import type { SaveState } from "../../record/save-queue.ts";
import "./save-mark.css";

interface SaveMarkOptions {
  readonly save: SaveState;
  /** Something is typed that is not a finished change yet. */
  readonly pending: boolean;
}

/** Says how the record stands towards what was done: by words and by the shape of the mark. */
export const SaveMark = ({ save, pending }: SaveMarkOptions) => (
  <span className="save-mark" data-is={pending && save.is !== "failed" ? "writing" : save.is} role="status">
    {wordsOf(save, pending)}
  </span>
);

function wordsOf(save: SaveState, pending: boolean): string {
  if (save.is === "failed") return "not saved";
  if (pending) return "writing";
  if (save.is === "saving") return "saving";
  if (save.is === "saved") return `saved ${timeInWords(save.at)}`;
  return save.is === "conflict" ? "changed in two places" : "";
}

interface SaveTroubleOptions {
  readonly save: SaveState;
  readonly retry: () => void;
}

/** Why something is not saved, and the way out. */
export function SaveTrouble({ save, retry }: SaveTroubleOptions) {
  if (save.is !== "failed") return null;
  return (
    <div className="save-trouble" role="alert">
      <span>
        “{save.words}” is not saved. {save.why}
        {save.retries ? " It is tried again by itself." : " What you wrote is kept on the page; mend it there."}
      </span>
      {save.retries && <Button onClick={retry}>Try now</Button>}
    </div>
  );
}
