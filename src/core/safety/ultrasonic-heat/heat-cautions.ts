import budd from "../../../../data/budd-2005/source.json" with { type: "json" };
import dominici from "../../../../data/dominici-2005/source.json" with { type: "json" };
import eriksson from "../../../../data/eriksson-albrektsson-1983/source.json" with { type: "json" };
import huttula from "../../../../data/huttula-2006/source.json" with { type: "json" };
import jain from "../../../../data/jain-2024/source.json" with { type: "json" };
import pinter from "../../../../data/pinter-2023/source.json" with { type: "json" };
import { standingCaution } from "../standing-caution.ts";
import { secondsTogether } from "./longest-runs.ts";
import type { Burst } from "./ultrasonic-heat-input.ts";
import type { Run } from "./ultrasonic-heat-output.ts";

/** The sources that cautions quote. */
export const cautionFiles = [eriksson, jain, dominici, huttula, budd, pinter];

/** Degrees of the body from which a rise is told. */
const bodyCelsius = 37;

/** From which bone was injured in the rabbit, and the rise from 37 degrees that it is. */
export const boneThreshold = {
  celsius: eriksson.celsius,
  seconds: eriksson.seconds,
  riseCelsius: eriksson.celsius - bodyCelsius,
};

/** The longest runs that the cautions are told of. */
interface Runs {
  readonly longest: Run | undefined;
  readonly dry: Run | undefined;
}

/**
 * What the length of bursts speaks for, beside the threshold of bone; the standing caution last.
 * @source the folders of data/ that {@link cautionFiles} names; docs/methods/ultrasonic-heat.md C5
 */
export function heatCautions(bursts: readonly Burst[], { longest, dry }: Runs): string[] {
  return [
    `Bone was injured from ${boneThreshold.celsius} degrees for ${boneThreshold.seconds} s on (rabbit; from memory), a rise of ${boneThreshold.riseCelsius} from ${bodyCelsius}; a rise of more than ${jain.riseCelsius} for over ${jain.seconds} s may harm ligament or bone. A tip or a fragment is hotter than the bone.`,
    ...(dry !== undefined && dry.seconds > dominici.seconds
      ? [
          `Dry for ${dry.seconds} s without a rest: over about ${dominici.seconds} s dry the root's surface can rise by more than 10 degrees (from memory).`,
        ]
      : dryInAll(bursts)),
    ...(longest !== undefined && longest.seconds >= boneThreshold.seconds ? [minuteText(longest)] : []),
    ...(dry === undefined ? [] : [dryText(bursts)]),
    standingCaution,
  ];
}

/** Each dry run short, all of them together not: a rest is not known to make up for that. */
function dryInAll(bursts: readonly Burst[]): string[] {
  const dry = secondsTogether(bursts.filter(({ coolant }) => coolant === "none").map(({ seconds }) => seconds));
  if (dry <= dominici.seconds) return [];
  return [
    `Dry for ${dry} s in all, though not at a stretch: no table tells how much what lies between cools. Over about ${dominici.seconds} s dry at a stretch the root's surface can rise by more than 10 degrees (from memory).`,
  ];
}

const minuteText = ({ seconds }: Run): string =>
  `${seconds} s without a rest are as long as the minute of the threshold or longer; in phases of ${pinter.seconds} s with rinsing between the largest mean rise on the root's surface was ${pinter.riseCelsius.toFixed(1)} degrees.`;

const dryText = (bursts: readonly Burst[]): string =>
  bursts.some(({ on, coolant }) => on === "post" && coolant === "none")
    ? `Dry vibration of a post for ${huttula.seconds / 60} min heated the root's surface more than with irrigation; over all, ${budd.root.rise} degrees (SD ${budd.root.sd}). A coolant counts more than its kind: cool, and pause.`
    : "Cool with water or air, and pause.";
