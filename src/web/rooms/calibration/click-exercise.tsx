import { useState } from "react";
import { useLocation } from "wouter";
import { type MarkedPlace, placeToMark } from "../../../figures/place-to-mark.ts";
import type { CalibrationView, ExerciseLine } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { momentInWords } from "../../parts/days-in-words.ts";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { Dialog } from "../../parts/dialog.tsx";
import { FigureView } from "../../parts/figure-view.tsx";
import { countOf } from "../../parts/figures-in-words.ts";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useBeginExercise, useRemoveExercise } from "../../record/calibration.ts";
import { kindWords } from "./click-rows.ts";

const room = "Calibration";
const kinds: readonly MarkedPlace[] = ["apex", "cusp", "crest", "entrance"];

/** The exercise of clicks: what it asks, and the way into it or back into the one that was paused. */
export function ClickExercise({ room: view }: { readonly room: CalibrationView }) {
  const underWay = view.exercises.find(({ finished }) => finished === undefined);
  return (
    <section className="click-exercise" aria-label="The exercise">
      {underWay === undefined ? <Begin view={view} /> : <GoOn view={view} line={underWay} />}
      <ul className="click-kinds" aria-label="What is marked">
        {kinds.map((kind) => {
          const figure = placeToMark(kind, { theme: "paper", widthPx: 108 });
          return (
            <li key={kind}>
              <FigureView figure={figure} />
              <span>{kindWords[kind]}</span>
              <span className="quiet">{figure.alternative}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Begin({ view }: { readonly view: CalibrationView }) {
  const [, go] = useLocation();
  const begin = useBeginExercise();
  const start = () => !begin.isPending && begin.mutate(undefined, { onSuccess: ({ id }) => go(addressOf(id)) });
  useShortcut("b", room, "Begin the exercise, or go on with it", start);
  return (
    <div className="click-words">
      <p>
        {view.films} films of teeth, shown twice in an order of their own; half of them mirrored the second time. Three
        places are asked on each: {view.marks} marks, about ten minutes. Zoom, window and loupe are yours, pointer or
        keyboard as you like. Mark as you do on a patient's film: neither faster nor with more care.
      </p>
      <p>
        Pause when you want: each mark is kept as it is made, and the last can be taken back. The films are made, and
        the true places are known. <DemoMark />
      </p>
      {begin.error && <SayRefusal of={begin.error} />}
      <Button weight="strong" hint="b" disabled={begin.isPending} onClick={start}>
        {view.exercises.length === 0 ? "Begin" : "Measure again"}
      </Button>
    </div>
  );
}

const addressOf = (id: string): string => `/calibration/clicks/${id}/mark`;

function GoOn({ view, line }: { readonly view: CalibrationView; readonly line: ExerciseLine }) {
  const [, go] = useLocation();
  const [asking, setAsking] = useState(false);
  const goOn = () => go(addressOf(line.id));
  useShortcut("b", room, "Begin the exercise, or go on with it", goOn);
  return (
    <div className="click-words">
      <p>
        <strong>Paused</strong> after {line.marked} of {view.marks} marks; begun {momentInWords(line.begunAt)}
        {line.who === "" ? "" : ` by ${line.who}`}. It goes on where you left it.
      </p>
      <progress className="click-progress" max={view.marks} value={line.marked} aria-label="Marks made" />
      <div className="click-ways">
        <Button weight="strong" hint="b" onClick={goOn}>
          Go on
        </Button>
        <Button weight="bare" onClick={() => setAsking(true)}>
          Remove it
        </Button>
      </div>
      {asking && <Removing line={line} close={() => setAsking(false)} />}
    </div>
  );
}

function Removing({ line, close }: { readonly line: ExerciseLine; readonly close: () => void }) {
  const remove = useRemoveExercise();
  return (
    <Dialog title="Remove this exercise?" close={close}>
      <div className="click-removing">
        <p>Its {countOf(line.marked, "mark")} will be gone; nothing was worked out from them yet.</p>
        {remove.error && <SayRefusal of={remove.error} />}
        <div className="click-ways">
          <Button
            weight="look"
            disabled={remove.isPending}
            onClick={() => remove.mutate(line.id, { onSuccess: close })}
          >
            Remove
          </Button>
          <Button onClick={close}>Keep it</Button>
        </div>
      </div>
    </Dialog>
  );
}
