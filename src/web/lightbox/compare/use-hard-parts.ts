import { useRef, useState } from "react";
import type { ImagePoint } from "../../../core/units.ts";
import type { Gesture } from "../../../record/change.ts";
import { type OutlineState, outlineAtRest, stepOutline } from "../tools/outline-tool.ts";
import type { ToolEvent } from "../tools/tool-step.ts";
import type { Comparison, FilmOutline } from "./comparison.ts";
import { hardPartOutlined, hardPartTakenOff } from "./comparison-gestures.ts";

/** Outlining on the first film what can't have changed. */
export interface HardPartUse {
  /** Whether the hand outlines; otherwise it marks landmarks. */
  readonly isOn: boolean;
  readonly turn: (on: boolean) => void;
  readonly drawing: OutlineState;
  readonly outlines: readonly FilmOutline[];
  readonly chosen: number | undefined;
  readonly choose: (index: number | undefined) => void;
  readonly send: (event: ToolEvent, samePlacePx: number) => void;
  readonly takeOff: (index: number) => void;
}

interface HardPartOptions {
  readonly comparison: Comparison;
  readonly record: (gesture: Gesture) => void;
  readonly say: (words: string) => void;
}

/** The record keeps no more outlines of one comparison. */
const mostOutlines = 40;
const none: readonly FilmOutline[] = [];

/** Outlines hard parts with the outline tool of the light box; what is finished is recorded. */
export function useHardParts({ comparison, record, say }: HardPartOptions): HardPartUse {
  const [isOn, setOn] = useState(false);
  const [drawing, setDrawing] = useState(outlineAtRest);
  const [chosen, choose] = useState<number>();
  // Several events can come before the next drawing; each begins where the one before ended.
  const latest = useRef({ drawing, comparison });
  latest.current = { drawing, comparison };
  const keep = (points: readonly ImagePoint[]): void => {
    const { comparison: now } = latest.current;
    const count = now.body.hardParts?.length ?? 0;
    if (count >= mostOutlines) {
      say(`Cannot add a part: ${mostOutlines} are outlined; take one off first`);
      return;
    }
    record(hardPartOutlined(now, points));
    choose(count);
  };
  const put = (next: OutlineState): void => {
    latest.current = { ...latest.current, drawing: next };
    setDrawing(next);
  };
  return {
    ...{ isOn, drawing, chosen, choose },
    outlines: comparison.body.hardParts ?? none,
    turn: (on) => {
      put(outlineAtRest);
      setOn(on);
      say(on ? "Outline hard parts on the first film" : "Mark landmarks on both films");
    },
    send: (event, samePlacePx) => {
      const { state, effects } = stepOutline(latest.current.drawing, event, { samePlacePx });
      put(state);
      for (const effect of effects)
        if (effect.do === "outlined") keep(effect.points);
        else if (effect.do === "say") say(effect.words);
    },
    takeOff: (index) => {
      if (latest.current.comparison.body.hardParts?.[index] === undefined) return;
      choose(undefined);
      record(hardPartTakenOff(latest.current.comparison, index));
    },
  };
}
