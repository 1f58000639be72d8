import type { Settings } from "../../record/settings.ts";
import type { ToothView } from "../record/readings.ts";

/** A tooth as the person writes it: `26`, `14`, `upper left 6`; its record number while the list of teeth is not there yet. */
export function toothInNotation(
  twoDigit: string,
  teeth: readonly ToothView[] | undefined,
  notation: Settings["notation"],
): string {
  return teeth?.find((tooth) => tooth.twoDigit === twoDigit)?.[notation] ?? twoDigit;
}

/** One way to read a text as a tooth. */
export interface Reading {
  readonly notation: Settings["notation"];
  readonly tooth: ToothView;
}

/** Every tooth that a text can mean, the person's own notation first. */
export function readingsOf(text: string, teeth: readonly ToothView[], own: Settings["notation"]): readonly Reading[] {
  const written = text.trim().replace(/\s+/g, " ");
  const order: readonly Settings["notation"][] = ["twoDigit", "universal", "quadrant"];
  return [own, ...order.filter((notation) => notation !== own)].flatMap((notation) =>
    teeth.filter((tooth) => isWritten(tooth, notation, written)).map((tooth) => ({ notation, tooth })),
  );
}

function isWritten(tooth: ToothView, notation: Settings["notation"], written: string): boolean {
  if (notation === "quadrant") return tooth.quadrant.toLowerCase() === written.toLowerCase();
  return tooth[notation] === written;
}
