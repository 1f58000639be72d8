import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import type { ExerciseView } from "../../../../server/api.ts";
import { Button } from "../../../parts/button.tsx";
import { DemoMark } from "../../../parts/demo-mark.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { PageHead } from "../../../parts/page-head.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import type { ExerciseUse } from "../../../record/calibration.ts";
import { AllMarked } from "./all-marked.tsx";
import { type ExercisePlace, exercisePlace } from "./exercise-place.ts";
import { MarkingPanel } from "./marking-panel.tsx";
import { MarkingStage } from "./marking-stage.tsx";
import { useMarkingFilm } from "./use-marking-film.ts";
import "./marking-box.css";

interface MarkingBoxOptions {
  readonly view: ExerciseView;
  readonly use: ExerciseUse;
}

const room = "Exercise";

/** The dark room in which an exercise is marked: one film at a time, and beside it what is asked. */
export function MarkingBox({ view, use }: MarkingBoxOptions) {
  const [, go] = useLocation();
  const place = exercisePlace(view);
  const takeBack = () => (view.marks.length === 0 ? undefined : use.act({ do: "takeBack" }));
  const pause = () => go("/calibration");
  useShortcut("Backspace", room, "Take back the last mark", takeBack);
  useShortcut("Control+z", room, "Take back the last mark", takeBack);
  useShortcut("q", room, "Pause; everything marked is kept", pause);
  const shown = place === undefined ? view.steps.length : place.stepIndex + 1;
  return (
    <div data-room="dark" className="marking">
      <div>
        <PageHead
          end={
            <>
              <SavedSoFar use={use} count={view.marks.length} />
              <Button hint="Backspace" disabled={view.marks.length === 0} onClick={takeBack}>
                Take back
              </Button>
              <Button hint="q" onClick={pause}>
                Pause
              </Button>
            </>
          }
        >
          <h1 className="marking-title">Click error</h1>
          <span className="marking-count">
            film {shown} of {view.steps.length}
          </span>
          <DemoMark />
        </PageHead>
        {use.saving.is === "failed" && (
          <SayRefusal of={use.saving.error} {...(use.saving.retries ? { retry: use.retry } : {})} />
        )}
      </div>
      {place === undefined ? (
        <AllMarked id={view.id} />
      ) : (
        <OneFilm key={`${place.step.film} ${place.step.round}`} view={view} place={place} use={use} />
      )}
    </div>
  );
}

const SavedSoFar = ({ use: { saving }, count }: { use: ExerciseUse; count: number }) => (
  <span className="quiet" role="status">
    {saving.is === "saving" ? "saving" : saving.is === "failed" ? "not saved" : `saved, ${countOf(count, "mark")}`}
  </span>
);

const loupes: readonly number[] = [0, 2, 3, 4];

/** What the person had in the hand; kept from film to film while the window is open. */
const remembered: { loupe: number } = { loupe: 0 };

function OneFilm({ view, place, use }: { view: ExerciseView; place: ExercisePlace; use: ExerciseUse }) {
  const film = useMarkingFilm(place.step, view.steps[place.stepIndex + 1]?.film);
  const [tool, setTool] = useState<"mark" | "window">("mark");
  const [loupe, setLoupe] = useState(remembered.loupe);
  remembered.loupe = loupe;
  useShortcut("w", room, "Change the window by dragging, or mark again", () =>
    setTool((now) => (now === "mark" ? "window" : "mark")),
  );
  useShortcut("a", room, "Automatic window", () => film.setWindow(undefined));
  useShortcut("i", room, "Exchange black and white", () =>
    film.setWindow({ ...film.window, invert: !film.window.invert }),
  );
  useShortcut("l", room, "Loupe: twice, three, four times, none", () => setLoupe(nextLoupe));
  const { element } = film.pane;
  useEffect(() => element.current?.focus({ preventScroll: true }), [element]);
  return (
    <div className="marking-body">
      <main className="film-place">
        <MarkingStage {...{ place, film, tool, loupe, act: use.act }} />
      </main>
      <MarkingPanel view={view} place={place} tool={tool} loupe={loupe} />
    </div>
  );
}

const nextLoupe = (now: number): number => loupes[(loupes.indexOf(now) + 1) % loupes.length] ?? 0;
