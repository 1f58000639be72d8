import "./view-bar.css";
import { useEffect, useState, useSyncExternalStore } from "react";
import { numberInWords } from "../../parts/figures-in-words.ts";
import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import type { PaneCount } from "../kernels/box-layout.ts";
import { nextLoupe, type Sight } from "../kernels/sight.ts";
import type { LightBox } from "./light-box.ts";
import { asRecorded } from "./look-panel.tsx";

const room = "Looking";

/** What the bar under the films turns on and off. */
export interface ViewBarOptions {
  readonly count: PaneCount;
  readonly lay: (count: PaneCount) => void;
  readonly sight: Sight;
  readonly change: (sight: Partial<Sight>) => void;
  readonly link: () => void;
  readonly next: () => void;
  readonly isLookOpen: boolean;
  readonly openLook: () => void;
  readonly isWholeScreen: boolean;
  readonly wholeScreen: () => void;
}

/** How films are looked at: how many at once, what lies over them, and the grey under the pointer. */
export function ViewBar({ box, ...bar }: ViewBarOptions & { readonly box: LightBox | undefined }) {
  const { count, lay, sight, change } = bar;
  useShortcut("q", room, "The next pane", bar.next);
  useShortcut("c", room, "As recorded by the sensor: nothing done to its grey", () => box && asRecorded(box));
  return (
    <div className="view-bar" role="toolbar" aria-label="Looking">
      <fieldset className="view-counts">
        <legend className="unseen">Films at once</legend>
        {counts.map((films) => (
          <Toggle
            key={films.count}
            {...{ keys: String(films.count), says: films.says, isOn: count === films.count }}
            act={() => lay(films.count)}
          >
            <CountDrawing count={films.count} />
          </Toggle>
        ))}
      </fieldset>
      {count > 1 && (
        <>
          <Toggle keys="y" says="Move the films together" isOn={sight.linked} act={bar.link}>
            together
          </Toggle>
          <Toggle
            keys="e"
            says="Show all films under the like of one window and look"
            isOn={sight.oneWindow}
            act={() => change({ oneWindow: !sight.oneWindow })}
          >
            one window
          </Toggle>
        </>
      )}
      <Toggle keys="g" says="Grid" isOn={sight.grid} act={() => change({ grid: !sight.grid })}>
        grid
      </Toggle>
      <Toggle
        keys="z"
        says="Loupe: 2, 3, 4, 6 times, none"
        isOn={sight.loupe !== 0}
        act={() => change({ loupe: nextLoupe(sight.loupe) })}
      >
        loupe{sight.loupe === 0 ? "" : ` ${sight.loupe}×`}
      </Toggle>
      <Toggle keys="h" says="Hide or show the marks" isOn={sight.marks} act={() => change({ marks: !sight.marks })}>
        marks
      </Toggle>
      <Toggle keys="l" says="Look: gamma, local contrast, sharpening" isOn={bar.isLookOpen} act={bar.openLook}>
        look
      </Toggle>
      <Toggle keys="u" says="Use the whole screen" isOn={bar.isWholeScreen} act={bar.wholeScreen}>
        whole screen
      </Toggle>
      {box && <GreyUnderPointer box={box} />}
    </div>
  );
}

const counts = [
  { count: 1, says: "One film" },
  { count: 2, says: "Two films side by side" },
  { count: 4, says: "Four films" },
] as const;

interface ToggleOptions {
  readonly keys: string;
  readonly says: string;
  readonly isOn: boolean;
  readonly act: () => void;
  readonly children: React.ReactNode;
}

function Toggle({ keys, says, isOn, act, children }: ToggleOptions) {
  useShortcut(keys, room, says, act);
  return (
    <button
      type="button"
      className="view-toggle"
      aria-pressed={isOn}
      aria-keyshortcuts={keys}
      title={says}
      onClick={act}
    >
      {children} <KeyHint keys={keys.toUpperCase()} />
    </button>
  );
}

const CountDrawing = ({ count }: { count: PaneCount }) => (
  <>
    <svg viewBox="0 0 18 14" aria-hidden="true">
      <path d={`M1 1h16v12H1z${count > 1 ? "M9 1v12" : ""}${count > 2 ? "M1 7h16" : ""}`} />
    </svg>
    <span className="unseen">{counts.find((films) => films.count === count)?.says}</span>
  </>
);

/** The stored value of the pixel under the pointer or the crosshair, as the sensor gave it. */
function GreyUnderPointer({ box }: { box: LightBox }) {
  const { pointed, crosshair, pixels, film } = box;
  const pointer = useSyncExternalStore(pointed.watch, pointed.now);
  const at = crosshair ?? pointer?.at;
  const [column, row] = at === undefined ? [undefined, undefined] : [Math.round(at.column), Math.round(at.row)];
  const [value, setValue] = useState<number>();
  const line = pixels.is === "open" ? pixels.line : undefined;
  useEffect(() => {
    if (line === undefined || column === undefined || row === undefined) return setValue(undefined);
    let left = false;
    line.ask({ ask: "sample", pixel: row * film.body.columns + column }).then(
      (answer) => !left && answer.is === "sample" && setValue(answer.value),
      () => undefined,
    );
    return () => {
      left = true;
    };
  }, [line, column, row, film.body.columns]);
  if (column === undefined || row === undefined || value === undefined) return null;
  return (
    <p className="view-grey">
      {`column ${column}, row ${row}: `}
      <b>{numberInWords(value, 0)}</b>
      {` of ${numberInWords(2 ** film.body.bitsStored - 1, 0)}`}
    </p>
  );
}
