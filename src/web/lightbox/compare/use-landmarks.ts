import { useRef, useState } from "react";
import type { ImagePoint } from "../../../core/units.ts";
import type { Gesture } from "../../../record/change.ts";
import { type Film, filmName } from "../kernels/film-name.ts";
import type { Comparison, Landmark, Side } from "./comparison.ts";
import { landmarkAdded, landmarkMoved, landmarkTakenOff } from "./comparison-gestures.ts";
import {
  type LandmarkEffect,
  type LandmarkEvent,
  type LandmarkWork,
  landmarkStep,
  noLandmarkWork,
  shownLandmarks,
} from "./landmark-work.ts";

/** What the two panes need to show and change landmarks. */
export interface LandmarkUse {
  readonly landmarks: readonly Landmark[];
  readonly work: LandmarkWork;
  readonly send: (event: LandmarkEvent) => void;
  readonly takeOff: (index: number) => void;
  /** The crosshair of each pane, where the keyboard has put one. */
  readonly crosshairs: Readonly<Partial<Record<Side, ImagePoint>>>;
  readonly setCrosshair: (side: Side, at: ImagePoint | undefined) => void;
}

interface LandmarkOptions {
  readonly comparison: Comparison;
  readonly films: Readonly<Record<Side, Film>>;
  readonly presentedOn: string;
  readonly record: (gesture: Gesture) => void;
  readonly say: (words: string) => void;
}

/** Marks landmarks on two films; what is finished is recorded. */
export function useLandmarks({ comparison, films, presentedOn, record, say }: LandmarkOptions): LandmarkUse {
  const [work, setWork] = useState(noLandmarkWork);
  const [crosshairs, setCrosshairs] = useState<LandmarkUse["crosshairs"]>({});
  const { landmarks } = comparison.body;
  // Several events can come before the next drawing; each begins where the one before ended.
  const latest = useRef({ work, comparison });
  latest.current = { work, comparison };
  const did = (effect: LandmarkEffect): void => {
    const { comparison: now } = latest.current;
    if (effect.do === "add") record(landmarkAdded(now, effect.places));
    else record(landmarkMoved(now, effect, filmName(films[effect.side], presentedOn)));
  };
  const send = (event: LandmarkEvent): void => {
    const before = latest.current.work;
    const { work: next, effect } = landmarkStep(before, event, latest.current.comparison.body.landmarks);
    latest.current = { ...latest.current, work: next };
    setWork(next);
    if (next.waiting !== undefined && before.waiting !== next.waiting)
      say(`Now mark the same place on ${filmName(films[otherSide(next.waiting.side)], presentedOn)}`);
    if (effect !== undefined) did(effect);
  };
  return {
    landmarks: shownLandmarks(landmarks, work),
    ...{ work, send, crosshairs },
    takeOff: (index) => {
      if (latest.current.comparison.body.landmarks[index] === undefined) return;
      send({ is: "chosen", index: undefined });
      record(landmarkTakenOff(latest.current.comparison, index));
    },
    setCrosshair: (side, at) => setCrosshairs((before) => ({ ...before, [side]: at })),
  };
}

/** The other of the two films. */
const otherSide = (side: Side): Side => (side === "before" ? "after" : "before");
