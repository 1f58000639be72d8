import { useRef } from "react";
import { toFilm, toScreen } from "../../../lightbox/kernels/film-placement.ts";
import { inFilm } from "../../../lightbox/kernels/film-point.ts";
import { rowsOf } from "../../../lightbox/two-view/level-rows.ts";
import {
  arrowAlong,
  type LevelTick,
  type MeasuredLine,
  placeOnLine,
  shareNearest,
} from "../../../lightbox/two-view/level-ticks.ts";
import { levelsFreed } from "../../../lightbox/two-view/pairing-gestures.ts";
import type { Pane } from "../../../lightbox/view/use-pane.ts";
import type { PlacementUse } from "../../../lightbox/view/use-placement.ts";
import { quantityInWords } from "../../../parts/figures-in-words.ts";
import { type TwoViewWork, useTwoView } from "./two-view-work.ts";

interface LevelTicksOptions {
  readonly index: number;
  readonly line: MeasuredLine;
  readonly placing: PlacementUse;
  readonly pane: Pane;
}

/** The levels on one film as numbers beside its trace that can be taken hold of. */
export function LevelTicks(options: LevelTicksOptions) {
  const { ticks } = useTwoView();
  return ticks.filter(({ isEnd }) => !isEnd).map((tick) => <TickHandle key={tick.number} tick={tick} {...options} />);
}

/** One press of an arrow, as a share of the trace; ten times that with Shift. */
const arrowStep = 0.004;

function TickHandle({ tick, index, line, placing, pane }: LevelTicksOptions & { readonly tick: LevelTick }) {
  const work = useTwoView();
  const dragging = useRef(false);
  const share = tick.shares[index] ?? 0;
  const at = toScreen(placing.placement, placing.pane, placeOnLine(line, share));
  const move = (to: number, when: "now" | "later") =>
    work.moveLevel({ number: tick.number, film: index, share: to }, when);
  const shareAt = (event: React.PointerEvent): number => {
    const on = inFilm(
      toFilm(placing.placement, placing.pane, pane.screenOf(event)),
      work.films[index]?.film.body ?? noSize,
    );
    return shareNearest(line, on).share;
  };
  const key = (event: React.KeyboardEvent) => {
    const way = arrowAlong(event.key, line, { share, placement: placing.placement });
    if (way !== undefined) move(share + way * arrowStep * (event.shiftKey ? 10 : 1), "later");
    else if (event.key === "Enter" || event.key === " ") work.finishLevel();
    else if (event.key === "Escape") work.dropLevel();
    else if ((event.key === "Delete" || event.key === "Backspace") && tick.fixed) freeLevel(work, tick);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <button
      type="button"
      role="slider"
      className="level-tick"
      data-fixed={tick.fixed}
      data-side={index % 2 === 0 ? "left" : "right"}
      style={{ left: at.x, top: at.y }}
      aria-label={`Level ${tick.number} on film ${index + 1}`}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(share * 100)}
      aria-valuetext={tickWords(work, tick, index)}
      aria-keyshortcuts="ArrowUp ArrowDown Delete"
      onFocus={() => work.setLevel(tick.number)}
      onBlur={() => {
        work.setLevel(undefined);
        work.finishLevel();
      }}
      onPointerEnter={() => work.setLevel(tick.number)}
      onPointerLeave={() => !dragging.current && work.setLevel(undefined)}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        dragging.current = true;
      }}
      onPointerMove={(event) => {
        if (!dragging.current) return;
        event.stopPropagation();
        move(shareAt(event), "later");
      }}
      onPointerUp={(event) => {
        event.stopPropagation();
        if (dragging.current) work.finishLevel();
        dragging.current = false;
      }}
      onPointerCancel={() => {
        dragging.current = false;
        work.dropLevel();
      }}
      onKeyDown={key}
    >
      {tick.number}
    </button>
  );
}

const noSize = { columns: 1, rows: 1 } as const;

const freeLevel = ({ record, hand, ticks }: TwoViewWork, { number }: LevelTick): void =>
  record(levelsFreed(hand, rowsOf(ticks, number), number));

/** Where a level lies, as the ledger has it; one in the hand is told when it has been measured again. */
function tickWords({ course, hand }: TwoViewWork, tick: LevelTick, film: number): string {
  const along = course?.levels[tick.number]?.alongMm[film];
  const set = tick.fixed ? `, set by hand` : "";
  return along === undefined ? `${hand.canal}${set}` : `${quantityInWords(along, "mm")} along the trace${set}`;
}
