import { type CSSProperties, type RefObject, useId, useMemo } from "react";
import { type BoardLevel, canalBoard } from "../../../../figures/canal-board.ts";
import { addLevel, canalsInWords, joinHere, splitHere } from "../../../../record/roots/level-steps.ts";
import type { LevelPlace } from "../../../../record/roots/root-step.ts";
import { levelInWords } from "../../../../record/roots/root-step.ts";
import { FigureView } from "../../../parts/figure-view.tsx";
import type { ToothView } from "../../../record/readings.ts";
import { levelBeside } from "./board-walk.ts";
import type { RootSteps } from "./use-root-steps.ts";

interface CanalBoardViewOptions {
  readonly tooth: ToothView;
  readonly steps: RootSteps;
  readonly readOnly: boolean;
  /** The control of the chosen level, so that a key can lead back to it. */
  readonly chosen: RefObject<HTMLInputElement | null>;
  /** What stands below each root. */
  readonly below: (root: number) => React.ReactNode;
}

/** The drawn roots, each level a place that can be chosen; between two levels one can be added. */
export function CanalBoardView({ tooth, steps, readOnly, chosen, below }: CanalBoardViewOptions) {
  const { hand, choose, act } = steps;
  const { roots } = hand;
  const board = useMemo(() => canalBoard({ tooth, roots, theme: "paper" }), [tooth, roots]);
  const name = useId();
  const press = (event: React.KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !event.key.startsWith("Arrow")) return;
    event.preventDefault();
    const next = levelBeside(board, hand.at, event.key);
    if (next) choose(next);
  };
  const isChosen = ({ root, level }: LevelPlace) => root === hand.at.root && level === hand.at.level;
  const here = board.levels.find(isChosen);
  return (
    <div className="canal-board" style={{ maxWidth: board.figure.widthPx }}>
      <div className="canal-board-drawing">
        <FigureView figure={board.figure} />
        {!readOnly && (
          <div role="radiogroup" aria-label="Levels of the roots" onKeyDown={press}>
            {board.levels.map((one) => (
              <label key={`${one.root} ${one.level}`} className="board-level" style={levelStyle(one)}>
                <input
                  type="radio"
                  name={name}
                  ref={isChosen(one) ? chosen : undefined}
                  checked={isChosen(one)}
                  onChange={() => choose({ root: one.root, level: one.level })}
                  onFocus={() => choose({ root: one.root, level: one.level })}
                  aria-label={levelName(roots, one)}
                />
              </label>
            ))}
          </div>
        )}
        {!readOnly &&
          board.between.map((one) => (
            <button
              key={`${one.root} ${one.level}`}
              type="button"
              className="board-add"
              style={betweenStyle(one)}
              aria-label={`Add a level to ${roots[one.root]?.name} behind level ${one.level + 1}`}
              title="Add a level here"
              onClick={() => act(addLevel({ ...hand, at: { root: one.root, level: one.level } }))}
            >
              <Cross />
            </button>
          ))}
        {!readOnly && here && (
          <span className="board-more" style={moreStyle(here)}>
            <button type="button" aria-label="A canal more here" title="Split" onClick={() => act(splitHere(hand))}>
              <Cross />
            </button>
            <button type="button" aria-label="A canal fewer here" title="Join" onClick={() => act(joinHere(hand))}>
              <Cross bar />
            </button>
          </span>
        )}
      </div>
      <div className="canal-board-below">
        {board.columns.map(({ root, x }) => (
          <div key={root} className="board-root" data-chosen={root === hand.at.root} style={{ left: percent(x) }}>
            {below(root)}
          </div>
        ))}
      </div>
    </div>
  );
}

const percent = (share: number): string => `${(share * 100).toFixed(3)}%`;

const levelStyle = ({ x, y, edge }: BoardLevel): CSSProperties => ({
  ...{ left: percent(x), top: percent(y), width: percent(edge * 2) },
});
const betweenStyle = ({ x, y, edge }: BoardLevel): CSSProperties => ({ left: percent(x - edge), top: percent(y) });
const moreStyle = ({ x, y, reach }: BoardLevel): CSSProperties => ({ left: percent(x + reach), top: percent(y) });

/** A level as it is read out: whose it is, where it lies, what is there. */
function levelName(roots: RootSteps["hand"]["roots"], { root, level }: BoardLevel): string {
  const { name = "", levels = [] } = roots[root] ?? {};
  const one = levels[level] ?? 1;
  const [count, form] = typeof one === "number" ? [one, undefined] : [one.canals, one.cShape];
  const place = `level ${level + 1} of ${levels.length}, ${levelInWords(level, levels.length)}`;
  return `Root ${name}, ${place}: ${canalsInWords(count)}${form === undefined ? "" : `, C-shaped ${form}`}`;
}

const Cross = ({ bar = false }: { readonly bar?: boolean }) => (
  <svg viewBox="0 0 16 16" aria-hidden="true">
    <path d={bar ? "M4 8h8" : "M4 8h8M8 4v8"} />
  </svg>
);
