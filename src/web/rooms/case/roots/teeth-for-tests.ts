import type { BodyOf } from "../../../../record/parts.ts";
import type { ToothView } from "../../../record/readings.ts";

/** The roots of a tooth as a part holds them. */
export type Roots = BodyOf<"anatomy">["roots"];

/** Permanent first molars as the server names them. */
export const firstMolars: Readonly<Record<"26" | "36" | "46", ToothView>> = {
  "26": molar("26", "14", "upper", "left"),
  "36": molar("36", "19", "lower", "left"),
  "46": molar("46", "30", "lower", "right"),
};

function molar(twoDigit: string, universal: string, arch: ToothView["arch"], side: ToothView["side"]): ToothView {
  const quadrant = `${arch} ${side} 6`;
  return {
    ...{ twoDigit, universal, quadrant, arch, side },
    ...{ dentition: "permanent", type: "molar", name: `${arch} ${side} first molar` },
  };
}

/** The roots that a first molar usually has. */
export const usualRoots: Readonly<Record<"26" | "46", Roots>> = {
  "26": [
    { name: "MB", side: "buccal", levels: [2, 1], orifices: ["MB1", "MB2"] },
    { name: "DB", side: "buccal", levels: [1] },
    { name: "P", side: "lingual", levels: [1] },
  ],
  "46": [
    { name: "M", levels: [2], orifices: ["MB", "ML"] },
    { name: "D", levels: [1] },
  ],
};
