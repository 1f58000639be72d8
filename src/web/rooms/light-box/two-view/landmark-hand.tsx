import { useState } from "react";
import type { ImagePoint } from "../../../../core/units.ts";
import { crosshairMoved, isArrow } from "../../../lightbox/kernels/crosshair-motion.ts";
import { toFilm } from "../../../lightbox/kernels/film-placement.ts";
import { inFilm, pairOf, pointOf } from "../../../lightbox/kernels/film-point.ts";
import type { FilmView } from "../../../lightbox/view/use-film-view.ts";
import { type FilmInWork, useTwoView } from "./two-view-work.ts";

/** What the hand does on a film while a landmark is being marked. */
export interface LandmarkHand {
  readonly isMarking: boolean;
  readonly crosshair: ImagePoint | undefined;
  readonly onPointerDown: (event: React.PointerEvent<HTMLDivElement>) => void;
  readonly onKeyDown: (event: React.KeyboardEvent<HTMLDivElement>) => void;
}

/** Marks the landmark's place on one film: a press, or arrows and Space. */
export function useLandmarkHand(view: FilmView, { film }: FilmInWork): LandmarkHand {
  const { landmark, setLandmark } = useTwoView();
  const [crosshair, setCrosshair] = useState<ImagePoint>();
  const mark = (at: ImagePoint) =>
    landmark && setLandmark({ ...landmark, places: { ...landmark.places, [film.id]: pairOf(at) } });
  const start = () => crosshair ?? inFilm(view.placing?.placement.centre ?? pointOf([0, 0]), film.body);
  return {
    isMarking: landmark !== undefined,
    crosshair: landmark === undefined ? undefined : crosshair,
    onPointerDown: (event) => {
      const { placing, pane } = view;
      if (placing === undefined || event.button !== 0) return;
      event.currentTarget.focus({ preventScroll: true });
      setCrosshair(undefined);
      mark(inFilm(toFilm(placing.placement, placing.pane, pane.screenOf(event)), film.body));
    },
    onKeyDown: (event) => {
      const { placing } = view;
      if (placing === undefined || event.target !== event.currentTarget || event.ctrlKey || event.metaKey) return;
      if (isArrow(event.key)) {
        const held = { shift: event.shiftKey, alt: event.altKey };
        setCrosshair(crosshairMoved(start(), { key: event.key, held }, placing.placement, film.body));
      } else if (event.key === " " || event.key === "Enter") mark(start());
      else return;
      event.preventDefault();
    },
  };
}

/** The landmark's place on a film, and the crosshair that looks for it. */
export function LandmarkDrawing({
  hand,
  film,
  unit,
}: {
  readonly hand: LandmarkHand;
  readonly film: string;
  readonly unit: number;
}) {
  const { landmark } = useTwoView();
  const marked = landmark?.places[film];
  return (
    <g className="drawing">
      {marked !== undefined && <Aim at={pointOf(marked)} unit={unit} isMarked />}
      {hand.crosshair !== undefined && <Aim at={hand.crosshair} unit={unit} />}
    </g>
  );
}

const Aim = ({ at: { column, row }, unit, isMarked = false }: { at: ImagePoint; unit: number; isMarked?: boolean }) => {
  const [gap, arm] = [(isMarked ? 0 : 4) * unit, (isMarked ? 9 : 18) * unit];
  const d = [
    `M${column - arm} ${row}H${column - gap}M${column + gap} ${row}H${column + arm}`,
    `M${column} ${row - arm}V${row - gap}M${column} ${row + gap}V${row + arm}`,
  ].join("");
  return (
    <>
      <path className="mark-rim" d={d} />
      <path className={isMarked ? "mark-line" : "mark-line crosshair"} d={d} />
    </>
  );
};
