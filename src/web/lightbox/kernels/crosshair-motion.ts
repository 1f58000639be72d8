import type { ImagePoint } from "../../../core/units.ts";
import { type FilmPlacement, filmStep } from "./film-placement.ts";
import { type FilmSize, filmPoint, inFilm } from "./film-point.ts";

/** The keys that move the crosshair, and which way each goes on the screen. */
const directions: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Keys held while an arrow is pressed. */
export interface HeldKeys {
  readonly shift: boolean;
  readonly alt: boolean;
}

/** Whether a key moves the crosshair. */
export const isArrow = (key: string): boolean => Object.hasOwn(directions, key);

/** How far one press goes, in pixels of the film: 10 with Shift, a quarter with Alt, 1 otherwise. */
export const crosshairStepPx = ({ shift, alt }: HeldKeys): number => (shift ? 10 : alt ? 0.25 : 1);

/** Where an arrow takes the crosshair: the way it points on the screen, however the film is held. */
export function crosshairMoved(
  from: ImagePoint,
  press: { key: string; held: HeldKeys },
  placement: FilmPlacement,
  film: FilmSize,
): ImagePoint {
  const [x, y] = directions[press.key] ?? [0, 0];
  const pixels = crosshairStepPx(press.held) * placement.zoom;
  const step = filmStep(placement, { x: x * pixels, y: y * pixels });
  return inFilm(filmPoint(from.column + step.column, from.row + step.row), film);
}

/** The step on the screen by which an arrow pushes the film itself, in pixels of the screen. */
export function pushOf(key: string, { shift }: HeldKeys): { x: number; y: number } {
  const [x, y] = directions[key] ?? [0, 0];
  const pixels = shift ? 200 : 40;
  // The film goes the other way: the arrow says where one looks.
  return { x: -x * pixels, y: -y * pixels };
}
