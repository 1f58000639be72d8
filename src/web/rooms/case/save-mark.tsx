import { Button } from "../../parts/button.tsx";
import { timeInWords } from "../../parts/days-in-words.ts";
import type { SaveState } from "../../record/save-queue.ts";
import "./save-mark.css";

interface SaveMarkOptions {
  readonly save: SaveState;
  /** Something is typed that is not a finished change yet. */
  readonly pending: boolean;
  readonly retry: () => void;
}

/** Says how the record stands towards what was done: by words and by the shape of the mark. */
export function SaveMark({ save, pending, retry }: SaveMarkOptions) {
  return (
    <span className="save-mark" data-is={pending && save.is !== "failed" ? "writing" : save.is} role="status">
      {save.is === "failed" ? (
        <>
          <span>
            not saved: {save.why}
            {save.retries ? " It is tried again by itself." : " Mend it on the page; what you wrote is kept there."}
          </span>
          {save.retries && (
            <Button weight="look" onClick={retry}>
              Try now
            </Button>
          )}
        </>
      ) : (
        <span>{wordsOf(save, pending)}</span>
      )}
    </span>
  );
}

function wordsOf(save: SaveState, pending: boolean): string {
  if (pending) return "writing";
  if (save.is === "saving") return "saving";
  if (save.is === "saved") return `saved ${timeInWords(save.at)}`;
  return save.is === "conflict" ? "changed in two places" : "";
}
