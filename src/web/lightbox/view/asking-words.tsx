import { useEffect, useRef, useState } from "react";
import { Button } from "../../parts/button.tsx";
import { readNumber } from "../../parts/fields/number-field.tsx";
import { toScreen } from "../kernels/film-placement.ts";
import { pairOf } from "../kernels/film-point.ts";
import type { MarkBody } from "../kernels/mark-shape.ts";
import { ownerQuestion } from "../kernels/owner-question.ts";
import { AskOwner } from "./ask-owner.tsx";
import type { Asking, LightBox } from "./light-box.ts";
import { useFilmAfterwards } from "./use-film-afterwards.ts";

type KnownLength = Extract<MarkBody, { shape: "knownLength" }>;

interface AskingWordsOptions {
  readonly box: LightBox;
  readonly canals: readonly string[];
  readonly roots: readonly string[];
}

/** The one word that a finished gesture still needs, asked beside the place where the hand stopped. */
export function AskingWords({ box, canals, roots }: AskingWordsOptions) {
  const { asking } = box;
  if (asking === undefined) return null;
  return (
    <div
      className="asking"
      role="dialog"
      aria-label={asking.what === "owner" ? ownerQuestion(asking.body) : "How long is it?"}
      style={placeOf(box, asking)}
    >
      {asking.what === "owner" ? (
        <AskOwner box={box} asking={asking} names={asking.body.shape === "crownRoot" ? roots : canals} />
      ) : (
        <AskLength box={box} asking={asking} />
      )}
    </div>
  );
}

const size = { width: 268, height: 240 } as const;

/** Beside the last place marked, at its left where there is no room at its right, and inside the pane. */
function placeOf({ placing }: LightBox, asking: Asking) {
  const at = asking.what === "owner" ? asking.at : asking.to;
  if (placing === undefined || at === undefined) return {};
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const { width, height } = placing.pane;
  const within = (place: number, most: number) => Math.min(Math.max(place, 12), Math.max(12, most));
  const hasRoom = x + 36 + size.width <= width;
  return {
    left: within(hasRoom ? x + 24 : x - 24 - size.width, width - size.width - 12),
    top: within(y - 40, height - size.height - 12),
  };
}

const objects: Readonly<Record<KnownLength["object"], string>> = {
  instrument: "instrument in the canal",
  gauge: "gauge or probe",
  scaleBar: "scale bar or ruler",
  implant: "implant",
  sphere: "sphere, across",
  other: "something else",
};

function AskLength({ box, asking }: { box: LightBox; asking: Extract<Asking, { what: "length" }> }) {
  const [typed, setTyped] = useState("");
  const [object, setObject] = useState<KnownLength["object"]>("instrument");
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  useFilmAfterwards(box);
  const fault = typed === "" ? undefined : faultOf(typed);
  const finish = () => {
    const lengthMm = lengthOf(typed);
    if (lengthMm === undefined) return field.current?.focus();
    const ends = { from: pairOf(asking.from), to: pairOf(asking.to) };
    box.answer({ shape: "knownLength", film: box.film.id, object, lengthMm, ...ends });
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        finish();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") box.passOver();
        if (event.key !== "Enter" || !(event.target instanceof HTMLSelectElement)) return;
        event.preventDefault();
        finish();
      }}
    >
      <p>How long is it?</p>
      <label>
        <span>Length in mm</span>
        <input
          ref={field}
          className="field-line"
          inputMode="decimal"
          value={typed}
          placeholder="21"
          aria-invalid={fault !== undefined ? true : undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      {fault !== undefined && <p className="asking-fault">{fault}</p>}
      <label>
        <span>What it is</span>
        <select
          className="field-select"
          value={object}
          onChange={({ target }) => setObject(Object.keys(objects).find(isObject(target.value)) ?? "other")}
        >
          {Object.entries(objects).map(([value, word]) => (
            <option key={value} value={value}>
              {word}
            </option>
          ))}
        </select>
      </label>
      <div className="asking-feet">
        <Button type="submit" weight="strong" disabled={lengthOf(typed) === undefined} hint="Enter">
          Record
        </Button>
        <Button weight="bare" hint="Escape" onClick={box.passOver}>
          Leave
        </Button>
      </div>
    </form>
  );
}

const isObject =
  (wanted: string) =>
  (value: string): value is KnownLength["object"] =>
    value === wanted;

function lengthOf(typed: string): number | undefined {
  const { value } = readNumber(typed, {}, true);
  return typeof value === "number" && value > 0 && value <= 60 ? value : undefined;
}

function faultOf(typed: string): string | undefined {
  const { fault } = readNumber(typed, {}, true);
  return fault ?? (lengthOf(typed) === undefined ? "A length is above 0 and at most 60 mm" : undefined);
}
