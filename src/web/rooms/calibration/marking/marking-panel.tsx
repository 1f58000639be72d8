import { placeToMark } from "../../../../figures/place-to-mark.ts";
import type { ExerciseView } from "../../../../server/api.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { sentenceInWords } from "../../../words/value-words.ts";
import { type ExercisePlace, marksInAll } from "./exercise-place.ts";

interface MarkingPanelOptions {
  readonly view: ExerciseView;
  readonly place: ExercisePlace;
  readonly tool: "mark" | "window";
  readonly loupe: number;
}

/** What is asked on this film: the place in words and as a drawing, the places of the film, and how much is done. */
export function MarkingPanel({ view, place, tool, loupe }: MarkingPanelOptions) {
  const { step, placeIndex } = place;
  const asked = step.places[placeIndex];
  useListedKeys();
  if (asked === undefined) return null;
  const figure = placeToMark(asked.kind, { theme: "dark", widthPx: 168 });
  return (
    <aside className="marking-panel" aria-label="What to mark">
      <section className="marking-asked" aria-live="polite">
        <p className="quiet">Mark now</p>
        <h2>{asked.says}</h2>
        {step.mirrored && <p className="unseen">This film is mirrored.</p>}
      </section>
      <div className="marking-meant">
        <FigureView figure={figure} />
        <p className="quiet">{figure.alternative}</p>
      </div>
      <ol className="marking-places" aria-label="Places on this film">
        {step.places.map(({ kind, says }, index) => (
          <li
            key={kind}
            data-state={stateOf(index, placeIndex)}
            aria-current={index === placeIndex ? "step" : undefined}
          >
            {says}
            <span className="unseen">{index < placeIndex ? ", marked" : ""}</span>
          </li>
        ))}
      </ol>
      <p className="quiet">
        {sentenceInWords(step.tooth)}, in the middle of the film.{" "}
        {step.round === 1 ? "First round." : secondRound(step.mirrored)}
      </p>
      <Progress view={view} />
      <p className="marking-keys quiet">
        <Keys of={["W"]} does={tool === "window" ? "mark again" : "window"} />
        <Keys of={["A"]} does="automatic" />
        <Keys of={["I"]} does="negative" />
        <Keys of={["L"]} does={loupe > 0 ? `loupe ${loupe}×` : "loupe"} />
        <Keys of={["+", "-", "0"]} does="size" />
        <Keys of={["?"]} does="all keys" />
      </p>
    </aside>
  );
}

const Keys = ({ of, does }: { readonly of: readonly string[]; readonly does: string }) => (
  <span>
    {of.map((key) => (
      <KeyHint key={key} keys={key} />
    ))}{" "}
    {does}
  </span>
);

const stateOf = (index: number, now: number): "done" | "now" | "due" =>
  index < now ? "done" : index === now ? "now" : "due";

const secondRound = (mirrored: boolean): string =>
  mirrored ? "Second round; this film is mirrored." : "Second round; this film is as before.";

function Progress({ view }: { readonly view: ExerciseView }) {
  const all = marksInAll(view);
  const { length } = view.marks;
  return (
    <div className="marking-progress">
      <progress max={all} value={length} aria-label={`${length} of ${all} marks`} />
      <span>
        {length} of {all} marks
      </span>
    </div>
  );
}

const keysRoom = "On the film";

/** Lists the keys that the film itself takes while it has the focus. */
function useListedKeys(): void {
  useListed("ArrowLeft", "Arrows bring and move the crosshair by a pixel, with Shift ten, with Alt a quarter");
  useListed(" ", "Space marks at the crosshair; held, it moves the film with the mouse");
  useListed("Enter", "Mark at the crosshair");
  useListed("Escape", "Put the crosshair away");
  useListed("+", "Larger; - makes it smaller, 0 shows the whole film");
}

const useListed = (keys: string, does: string): void => useShortcut(keys, keysRoom, does, () => false);
