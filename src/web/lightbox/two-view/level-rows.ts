import type { LevelTick } from "./level-ticks.ts";

/** Rows of shares as the record keeps them: one for each level that a person fixed, a share for each film. */
export type LevelRows = readonly (readonly number[])[];

/** A level that is moved on one of its films. */
export interface MovedLevel {
  /** The level's number. */
  readonly number: number;
  /** Index of the film among the films of the course. */
  readonly film: number;
  readonly share: number;
}

/** Two levels on one trace stay at least so far apart, as a share of it. */
const leastApart = 0.01;
/** A hundredth of a percent of a canal is finer than any hand. */
const rounded = (share: number): number => Math.round(share * 10_000) / 10_000;

/** How far a level may go on a film at once: between its neighbours, so that it stays the level that it is. */
export function roomOf(
  ticks: readonly LevelTick[],
  { number, film }: Pick<MovedLevel, "number" | "film">,
): { readonly low: number; readonly high: number } {
  const before = ticks.filter((one) => one.number < number).map(({ shares }) => shares[film] ?? 0);
  const after = ticks.filter((one) => one.number > number).map(({ shares }) => shares[film] ?? 1);
  return { low: Math.max(0, ...before) + leastApart, high: Math.min(1, ...after) - leastApart };
}

/**
 * The levels after a move: the moved one is fixed on every film, where it was put as far as its room goes. One whose
 * neighbours leave it no room stays what it was.
 */
export function withLevelMoved(ticks: readonly LevelTick[], moved: MovedLevel): readonly LevelTick[] {
  const tick = ticks.find(({ number, isEnd }) => number === moved.number && !isEnd);
  if (tick === undefined) return ticks;
  const wanted = tick.shares.with(moved.film, moved.share);
  const rooms = wanted.map((_, film) => roomOf(ticks, { number: moved.number, film }));
  if (rooms.some(({ low, high }) => low > high)) return ticks;
  const shares = wanted.map((share, film) => within(rooms[film], share));
  return ticks.map((one) => (one === tick ? { ...tick, fixed: true, shares } : one));
}

const within = (room: { readonly low: number; readonly high: number } | undefined, share: number): number =>
  room === undefined ? share : Math.max(room.low, Math.min(room.high, share));

/** The rows of all fixed levels, or of all but one. */
export const rowsOf = (ticks: readonly LevelTick[], without?: number): LevelRows =>
  ticks
    .filter(({ number, fixed, isEnd }) => fixed && !isEnd && number !== without)
    .map(({ shares }) => shares.map(rounded));
