import premolars from "../../../../data/premolar-separation/source.json" with { type: "json" };
import type { TubeShiftOutput } from "./tube-shift-output.ts";

/** The row of teeth is looked at straight on at this angle of the source. */
const straightOnDeg = 90;

/**
 * From which angle neighbours lie over the root of an upper first premolar: mean and standard deviation.
 * @source Dentistry Journal, March 2025 (abstract seen)
 */
export function neighbourOverlap(): TubeShiftOutput["overlap"] {
  const { canineOverlapsFrom: canine, secondPremolarOverlapsFrom: premolar, id: source } = premolars;
  const what = (neighbour: string) => `upper first premolar: ${neighbour}`;
  return [
    {
      ...{ what: what("the canine lies over it"), towards: "mesial", source },
      ...{ fromDeg: round(canine.angleDeg - straightOnDeg), sdDeg: canine.sdDeg },
    },
    {
      ...{ what: what("the second premolar lies over it"), towards: "distal", source },
      ...{ fromDeg: round(straightOnDeg - premolar.angleDeg), sdDeg: premolar.sdDeg },
    },
  ];
}

const round = (value: number): number => Math.round(100 * value) / 100;
