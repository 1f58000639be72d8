import { useState } from "react";
import { numbered } from "./comparison.ts";
import type { LandmarkUse } from "./use-landmarks.ts";

interface LandmarkListOptions {
  readonly use: LandmarkUse;
  readonly name: (index: number, name: string) => void;
}

/** The landmarks by number: chosen, named and taken off from here. */
export function LandmarkList({ use, name }: LandmarkListOptions) {
  const { landmarks, work } = use;
  return (
    <section className="landmark-list" aria-label="Landmarks">
      <h2>Landmarks</h2>
      {landmarks.length === 0 && (
        <p className="quiet">
          Mark a place on one film and the same place on the other: cusps, crests of bone, tips of roots of neighbours;
          what treatment did not change. Four are needed, no three in line; more are better.
        </p>
      )}
      <ol>
        {numbered(landmarks).map(({ number, places }) => (
          <li key={number} data-chosen={number - 1 === work.chosen}>
            <button
              type="button"
              className="landmark-choose"
              aria-pressed={number - 1 === work.chosen}
              aria-label={`Landmark ${number}`}
              onClick={() => use.send({ is: "chosen", index: number - 1 === work.chosen ? undefined : number - 1 })}
            >
              {number}
            </button>
            <NameField
              key={places.name ?? ""}
              number={number}
              stands={places.name ?? ""}
              put={(typed) => name(number - 1, typed)}
            />
            <button
              type="button"
              className="mark-off"
              aria-label={`Take off landmark ${number}`}
              title="Take off (Delete)"
              onClick={() => use.takeOff(number - 1)}
            >
              <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M4 4l8 8M12 4l-8 8" />
              </svg>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** A name counts when the field is left or Enter is pressed. */
function NameField({ number, stands, put }: { number: number; stands: string; put: (name: string) => void }) {
  const [typed, setTyped] = useState(stands);
  const finish = () => {
    if (typed.trim() !== stands) put(typed.trim());
  };
  return (
    <input
      className="mark-name-field"
      value={typed}
      maxLength={120}
      placeholder="what is there"
      aria-label={`Name of landmark ${number}`}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === "Enter") finish();
        if (event.key === "Escape") setTyped(stands);
      }}
    />
  );
}
