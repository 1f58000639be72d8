import { useSyncExternalStore } from "react";
import { type EmergencyName, emergencyNames } from "../../record/clinic-rules.ts";

const mark = "emergency";

/** What the address says of the emergency page: shut, open at its choice of four, or at one of them. */
export type EmergencyPlace = "shut" | "choice" | EmergencyName;

/** Reads `#emergency` or `#emergency-allergy`; anything else is somebody else's place. */
export function placeOfHash(hash: string): EmergencyPlace {
  if (hash === `#${mark}`) return "choice";
  return emergencyNames.find((name) => hash === `#${mark}-${name}`) ?? "shut";
}

/** The part of an address that opens it. */
export const hashOf = (place: Exclude<EmergencyPlace, "shut">): string =>
  place === "choice" ? `#${mark}` : `#${mark}-${place}`;

const moved = ["hashchange", "popstate"] as const;

function listen(tell: () => void): () => void {
  for (const kind of moved) window.addEventListener(kind, tell);
  return () => {
    for (const kind of moved) window.removeEventListener(kind, tell);
  };
}

/** Where the emergency page stands now. The room below keeps its own address, so nothing of it is left or lost. */
export const useEmergencyPlace = (): EmergencyPlace =>
  useSyncExternalStore(listen, () => placeOfHash(window.location.hash));

/** Whether it was opened from a room of this window; then the way back is the step before. */
let openedHere = false;

/** Opens the page above whatever is shown. */
export function openEmergency(): void {
  openedHere = true;
  window.location.hash = hashOf("choice");
}

/** Goes from one emergency to another; the way back stays one step. */
export const chooseEmergency = (place: Exclude<EmergencyPlace, "shut">): void => inPlace(hashOf(place));

/** Back to exactly where the person was. */
export function shutEmergency(): void {
  if (openedHere) window.history.back();
  else inPlace("");
  openedHere = false;
}

/** Another room takes the page's place. */
export function leaveEmergency(goInPlace: () => void): void {
  openedHere = false;
  goInPlace();
  window.dispatchEvent(new Event("hashchange"));
}

/** Writes another end of the address without a step to go back, and tells whoever listens. */
function inPlace(hash: string): void {
  const { pathname, search } = window.location;
  window.history.replaceState(window.history.state, "", pathname + search + hash);
  window.dispatchEvent(new Event("hashchange"));
}
