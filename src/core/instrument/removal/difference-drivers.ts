import type { RemovalOutput } from "../removal-output.ts";
import { drawnInterval } from "./estimate.ts";
import type { WayInputs, WayShares } from "./way-inputs.ts";
import { healedBy } from "./way-outcomes.ts";
import { estimateOf, overlap } from "./weighed-ways.ts";

type Driver = RemovalOutput["drivers"][number];
type Input = Exclude<keyof WayShares, "gain" | "kept" | "keptAfterSurgery">;

const names: Readonly<Record<Input, string>> = {
  success: "The fragment is removed or bypassed",
  bypassed: "Successes that are a bypass",
  worth: "What a bypass is worth, against removal",
  perforation: "The attempt perforates",
  sealed: "Healed after a sealed perforation",
  bypass: "A hidden fragment is bypassed",
  left: "Healed with the fragment left",
  free: "Healed without a fragment",
  surgery: "Healed after surgery",
};

const inputsOf: Readonly<Record<Driver["way"], readonly Input[]>> = {
  remove: ["success", "bypassed", "worth", "perforation", "sealed", "left", "free"],
  bypass: ["bypass", "worth", "left", "free"],
  surgery: ["surgery", "left"],
};

/**
 * What drives the difference of each way against leaving the fragment.
 * Each input is moved over the interval of its own draws, the others stay at their means.
 * @source docs/methods/removal.md C13
 */
export const differenceDrivers = (inputs: WayInputs): Driver[] =>
  (["remove", "bypass", "surgery"] as const).map((way) => driversOf(way, inputs));

function driversOf(way: Driver["way"], inputs: WayInputs): Driver {
  const difference = (shares: WayShares): number => healedBy[way](shares) - healedBy.leave(shares);
  const moved = inputsOf[way].map((input) => {
    const { low, high } = drawnInterval(inputs.draws.map((draw) => draw[input]));
    const at = (value: number): number => difference(withInput(inputs, input, value));
    return { name: names[input], low, high, differenceAtLow: at(low), differenceAtHigh: at(high) };
  });
  return {
    ...{ way, against: "leave", difference: estimateOf(inputs, difference) },
    overlap: overlap(estimateOf(inputs, healedBy[way]), estimateOf(inputs, healedBy.leave)),
    inputs: moved.toSorted((a, b) => width(b) - width(a)),
  };
}

/** The means with one of them moved; the part of the gain that the attempt reaches follows. */
function withInput({ means, gainAt }: WayInputs, input: Input, value: number): WayShares {
  const moved = { ...means, [input]: value };
  const reached = gainAt(moved.bypassed, moved.worth);
  return { ...moved, gain: (reached * moved.success) / means.success };
}

const width = ({ differenceAtLow, differenceAtHigh }: Driver["inputs"][number]): number =>
  Math.abs(differenceAtHigh - differenceAtLow);
