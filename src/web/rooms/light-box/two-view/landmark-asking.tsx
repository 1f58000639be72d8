import { useId, useState } from "react";
import { pointOf } from "../../../lightbox/kernels/film-point.ts";
import { spotShared } from "../../../lightbox/two-view/pairing-gestures.ts";
import { Button } from "../../../parts/button.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { newPartId } from "../../../record/new-part-id.ts";
import { useTwoView } from "./two-view-work.ts";

const offers = [
  "buccal cusp",
  "lingual cusp",
  "edge of the filling",
  "cementoenamel junction, mesial",
  "bone crest, distal",
];

/** Asks for the same place on every film, then for its name. */
export function LandmarkAsking() {
  const { films, landmark, setLandmark, spots, record } = useTwoView();
  const [what, setWhat] = useState("");
  const names = useId();
  const close = () => setLandmark(undefined);
  useShortcut("Escape", "Two views", "Leave the landmark", close);
  if (landmark === undefined) return null;
  const left = films.filter(({ film }) => landmark.places[film.id] === undefined);
  const name = what.trim();
  const isTaken = spots.some((spot) => spot.what === name);
  const keep = () => {
    const places = films.flatMap(({ film }) => {
      const at = landmark.places[film.id];
      return at === undefined ? [] : [{ id: newPartId("mark"), film: film.id, at: pointOf(at) }];
    });
    record(spotShared(name, places));
    close();
  };
  return (
    <form
      className="asking landmark-asking"
      aria-label="New landmark"
      onSubmit={(event) => {
        event.preventDefault();
        if (left.length === 0 && name !== "" && !isTaken) keep();
      }}
    >
      <p role="status">
        {left.length > 0
          ? `Press the same thing on each film: now on ${left[0]?.name ?? ""}`
          : "Marked on each film. What is it?"}
      </p>
      <label>
        <span>Name</span>
        <input
          className="field-line"
          value={what}
          list={names}
          placeholder="buccal cusp"
          aria-invalid={isTaken ? true : undefined}
          onChange={(event) => setWhat(event.target.value)}
          onKeyDown={(event) => event.key === "Escape" && close()}
        />
      </label>
      <datalist id={names}>
        {offers.map((offer) => (
          <option key={offer} value={offer} />
        ))}
      </datalist>
      {isTaken && <p className="asking-fault">There is a landmark of this name; give this one another</p>}
      <div className="asking-feet">
        <Button type="submit" weight="strong" disabled={left.length > 0 || name === "" || isTaken}>
          Keep landmark
        </Button>
        <Button weight="bare" onClick={close}>
          Leave it
        </Button>
      </div>
    </form>
  );
}
