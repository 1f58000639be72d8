import type { ImagePoint } from "../../../../core/units.ts";
import { crosshairMoved, isArrow } from "../../../lightbox/kernels/crosshair-motion.ts";
import { toScreen } from "../../../lightbox/kernels/film-placement.ts";
import { type FilmSize, inFilm } from "../../../lightbox/kernels/film-point.ts";
import type { MarkingFilm } from "./use-marking-film.ts";

/** A key as it comes from the keyboard; one that repeats while it is held marks once. */
type Press = Pick<KeyboardEvent, "key" | "shiftKey" | "altKey"> & {
  readonly repeat?: boolean;
  readonly ctrlKey?: boolean;
  readonly metaKey?: boolean;
};

/** What a key does while the film of an exercise has the focus; false for a key that is not the film's. */
export function keyWhileMarking(
  film: MarkingFilm,
  size: FilmSize,
  press: Press,
  mark: (at: ImagePoint, by: "keyboard") => void,
): boolean {
  const { placing } = film;
  if (placing === undefined || film.pixels.is !== "open" || press.ctrlKey === true || press.metaKey === true)
    return false;
  if (isArrow(press.key)) return moved(film, size, press);
  const factor = zooms[press.key];
  if (factor !== undefined) return done(placing.zoom(factor));
  if (press.key === "0") return done(placing.fit());
  if (press.key === "Escape" && film.crosshair !== undefined) return done(film.setCrosshair(undefined));
  if (press.key !== "Enter") return false;
  if (press.repeat === true) return true;
  if (film.crosshair === undefined) return done(film.setCrosshair(middleOf(film, size)));
  return done(mark(film.crosshair, "keyboard"));
}

const zooms: Readonly<Record<string, number>> = { "+": 1.25, "=": 1.25, "-": 0.8, _: 0.8 };
const done = (_: unknown): true => true;
const margin = 24;

const middleOf = ({ placing }: MarkingFilm, size: FilmSize): ImagePoint | undefined =>
  placing && inFilm(placing.placement.centre, size);

/** Moves the crosshair, which begins in the middle of what is seen, and the film under one that would leave the pane. */
function moved(film: MarkingFilm, size: FilmSize, press: Press): true {
  const { placing } = film;
  const from = film.crosshair ?? middleOf(film, size);
  if (placing === undefined || from === undefined) return true;
  const held = { shift: press.shiftKey, alt: press.altKey };
  const at = crosshairMoved(from, { key: press.key, held }, placing.placement, size);
  film.setCrosshair(at);
  const { x, y } = toScreen(placing.placement, placing.pane, at);
  const over = (place: number, room: number) => Math.min(0, room - margin - place) + Math.max(0, margin - place);
  const by = { x: over(x, placing.pane.width), y: over(y, placing.pane.height) };
  if (by.x !== 0 || by.y !== 0) placing.push(by);
  return true;
}
