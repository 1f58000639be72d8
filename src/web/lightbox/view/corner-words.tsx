import { Button } from "../../parts/button.tsx";
import { KeyHint } from "../../parts/key-hint.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { startWords, usualStart } from "../kernels/course-start.ts";
import { isPlainLook, lookInWords } from "../kernels/film-look.ts";
import { windowText } from "../kernels/grey-window.ts";
import type { Polarity } from "../tools/tool-step.ts";
import { tools } from "../tools/tools.ts";
import type { LightBox } from "./light-box.ts";
import { asRecorded } from "./look-panel.tsx";

/** What stands in the corners of the film: what the tool waits for, and how the film is shown. */
export const CornerWords = ({ box }: { readonly box: LightBox }) => (
  <div className="corner-words">
    <ToolWords box={box} />
    <ViewWords box={box} />
  </div>
);

function ToolWords({ box }: { box: LightBox }) {
  const { tool, ridge, polarity } = box;
  const { state } = tool;
  useShortcut("p", "Light box", "Follow dark or bright lines", () => box.follow(other(polarity)));
  if (state.tool !== "trace")
    return state.tool === "move" ? null : <p>{tools.find((one) => one.tool === state.tool)?.says}</p>;
  const made = ridge[polarity] ?? 0;
  return (
    <>
      <p>
        {state.ending
          ? "Following the line"
          : state.course.anchors.length === 0
            ? `Mark ${startWords[usualStart(box.film)]}`
            : "Mark places on the way; Enter or a double press at the apex"}
        {made < 1 && !box.followsNothing && <Progress fraction={made} />}
      </p>
      <div className="corner-choice" role="radiogroup" aria-label="Lines to follow">
        <PolarityChoice box={box} polarity="dark" says="dark, a canal" />
        <PolarityChoice box={box} polarity="bright" says="bright, a filling" />
        <KeyHint keys="P" />
      </div>
    </>
  );
}

const other = (polarity: Polarity): Polarity => (polarity === "dark" ? "bright" : "dark");

const PolarityChoice = ({ box, polarity, says }: { box: LightBox; polarity: Polarity; says: string }) => (
  <label>
    <input
      type="radio"
      name="polarity"
      checked={box.polarity === polarity}
      onChange={() => {
        box.follow(polarity);
        box.pane.element.current?.focus({ preventScroll: true });
      }}
    />
    <span>{says}</span>
  </label>
);

const Progress = ({ fraction }: { fraction: number }) => (
  <progress className="ridge-progress" max={1} value={fraction} aria-label="Looking for lines on the film" />
);

function ViewWords({ box }: { box: LightBox }) {
  const { pixels, show } = box;
  const original = pixels.is === "open" ? pixels.film.window : undefined;
  const reset = () => original && show({ window: original }, "Window reset");
  useShortcut("a", "Light box", "Automatic window", reset);
  const isOriginal =
    original !== undefined && original.centre === box.window.centre && original.width === box.window.width;
  return (
    <div className="corner-view">
      {box.tool.state.tool === "window" && <p>{windowText(box.window)}</p>}
      {!isPlainLook(box.look) && (
        <>
          <p>{lookInWords(box.look)}</p>
          <Button weight="bare" hint="C" onClick={() => asRecorded(box)}>
            as recorded
          </Button>
        </>
      )}
      {original !== undefined && (!isOriginal || box.window.invert) && (
        <Button weight="bare" hint="A" onClick={reset}>
          automatic window
        </Button>
      )}
    </div>
  );
}
