import { useLocation } from "wouter";

/** What a room is drawn on: paper for reading, the dark for films. */
export type Ground = "paper" | "dark";

const darkRooms = /^\/case\/[^/]+\/light-box(\/|$)|^\/calibration\/clicks\/[^/]+\/mark$/;

/** The ground of the room that an address names. */
export const groundOf = (place: string): Ground => (darkRooms.test(place) ? "dark" : "paper");

/** The ground of the room that is open, for what lies above it. */
export function useGround(): Ground {
  const [place] = useLocation();
  return groundOf(place);
}
