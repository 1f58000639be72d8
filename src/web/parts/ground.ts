import { useLocation } from "wouter";

/** What a room is drawn on: paper for reading, the dark for films. */
export type Ground = "paper" | "dark";

/** The ground of the room that an address names. */
export const groundOf = (place: string): Ground => (/^\/case\/[^/]+\/light-box(\/|$)/.test(place) ? "dark" : "paper");

/** The ground of the room that is open, for what lies above it. */
export function useGround(): Ground {
  const [place] = useLocation();
  return groundOf(place);
}
