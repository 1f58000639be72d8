import { Button } from "../../parts/button.tsx";
import { numberedParts } from "./hard-parts-drawn.tsx";
import type { HardPartUse } from "./use-hard-parts.ts";

interface HardPartListOptions {
  readonly use: HardPartUse;
  readonly outline: () => void;
}

/** The parts to go by: what they are for, outlined, chosen and taken off from here. */
export function HardPartList({ use, outline }: HardPartListOptions) {
  const { outlines, chosen, choose, takeOff, isOn } = use;
  return (
    <section className="landmark-list" aria-label="Parts to go by">
      <h2>Parts to go by</h2>
      <p className="quiet">
        {outlines.length === 0
          ? "The whole of both films brings them together. Outline what can't have changed, such as neighbouring teeth, to go by that alone."
          : "Only what lies in these outlines brings the films together; what can't have changed belongs in them."}
      </p>
      <ol>
        {numberedParts(outlines).map(({ number }) => (
          <li key={number} data-chosen={number - 1 === chosen} className="hard-part-line">
            <button
              type="button"
              className="landmark-choose"
              aria-pressed={number - 1 === chosen}
              onClick={() => choose(number - 1 === chosen ? undefined : number - 1)}
            >
              Part {number}
            </button>
            <button
              type="button"
              className="mark-off"
              aria-label={`Take off part ${number}`}
              title="Take off (Delete)"
              onClick={() => takeOff(number - 1)}
            >
              <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M4 4l8 8M12 4l-8 8" />
              </svg>
            </button>
          </li>
        ))}
      </ol>
      {isOn ? (
        <p>
          Press corner by corner on the first film, or sweep around; Enter or the first corner closes it, Backspace
          takes a corner back, H ends.
        </p>
      ) : (
        <Button hint="H" onClick={outline}>
          Outline a part
        </Button>
      )}
    </section>
  );
}
