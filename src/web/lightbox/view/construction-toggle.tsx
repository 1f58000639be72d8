import { builtIn, type ConstructionName, canDraw } from "../../../pages/on-film/construction-measure.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { lowered } from "../../words/capital.ts";
import { constructionDrawn } from "../kernels/film-gestures.ts";
import type { Mark } from "../kernels/mark-shape.ts";
import type { LightBox } from "./light-box.ts";

interface ConstructionToggleOptions {
  readonly box: LightBox;
  readonly mark: Mark;
  readonly entry: LedgerEntry;
  readonly name: ConstructionName;
  readonly says: string;
}

/** Draws over the film how a measure was built, or takes that off again; nothing where it has no construction. */
export function ConstructionToggle({ box, mark, entry, name, says }: ConstructionToggleOptions) {
  const { body, ...rest } = mark;
  if (body.shape !== "trace" || !canDraw(builtIn(entry.output), name)) return null;
  const isDrawn = body.drawn?.includes(name) === true;
  return (
    <button
      type="button"
      className="construction-toggle"
      aria-pressed={isDrawn}
      aria-label={`${says}: show how it was built`}
      title={isDrawn ? "Take the construction off the film" : "Show on the film how it was built"}
      onClick={() =>
        box.record(constructionDrawn({ ...rest, body }, { name, says: `${lowered(says)}, its construction` }, box))
      }
    >
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d="M3 2v12h11M3 14L12 4M7 14a4.500 4.500 0 0 0-1.200-3" />
      </svg>
    </button>
  );
}
