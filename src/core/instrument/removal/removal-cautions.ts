import budd from "../../../../data/budd-2005/source.json" with { type: "json" };
import eriksson from "../../../../data/eriksson-albrektsson-1983/source.json" with { type: "json" };
import jain from "../../../../data/jain-2024/source.json" with { type: "json" };
import kessler from "../../../../data/kessler-1983/source.json" with { type: "json" };
import madarati from "../../../../data/madarati-2013/source.json" with { type: "json" };
import panitvisai from "../../../../data/panitvisai-2010/source.json" with { type: "json" };
import pinter from "../../../../data/pinter-2023/source.json" with { type: "json" };
import souter from "../../../../data/souter-messer-2005/source.json" with { type: "json" };
import ward from "../../../../data/ward-2003/source.json" with { type: "json" };
import { roundedMm } from "../canal-bending.ts";
import { assumedInnerSide, type RemovalInput } from "../removal-input.ts";
import type { RemovalOutput } from "../removal-output.ts";

/** The sources that cautions quote. */
export const cautionFiles = [souter, ward, kessler, jain, eriksson, pinter, madarati, budd];

type Weighed = Pick<RemovalOutput, "place" | "visibility" | "sightLine">;

/**
 * What a person has to keep in mind beside the numbers.
 * @source the folders of data/ that it names; docs/methods/removal.md C17
 */
export const removalCautions = (
  input: RemovalInput,
  { place, visibility, sightLine }: Weighed,
  courseMm?: number,
): string[] => [
  "The published ways are not comparable groups: who was chosen for what is not known. No way is called the best.",
  "The outcomes of the ways are published ones: they do not know the walls of this root.",
  ...(input.lesion === "present"
    ? [
        `With a lesion before and a fragment left a review prints ${percentOf(panitvisai.outcomes[0]?.proportion)}, lower than the matched series; its counts were not read.`,
      ]
    : []),
  `Seen against hidden pieces (nevares-2012): the counts give P = ${visibility.p.toFixed(6)}, the series prints P = .0009; both are kept.`,
  ...sideOfLine(input, sightLine),
  ...oneFilm(input, sightLine),
  ...(place.third === "apical" ? [cited(souter)] : []),
  ...(place.bend === "beyond" ? [cited(ward)] : []),
  ...thinZone(input),
  ...heat(input),
  ...beyondForamen(input, courseMm),
];

/** What a source says, with its name at the end of it. */
const cited = ({ says, id }: { readonly says: string; readonly id: string }): string =>
  `${says.replace(/\.$/, "")} (${id}).`;

/** A line that lies nearer to the canal than this runs towards no wall, mm. */
const straightMm = 0.005;

function sideOfLine({ innerSide, toothType }: RemovalInput, line: Weighed["sightLine"]): string[] {
  if (innerSide !== undefined || line === undefined || line.maxOffsetMm < straightMm) return [];
  const single = toothType === "anterior" ? " A root of its own has no furcation." : "";
  return [
    `Assumed, as nobody said it: the canal bends towards the ${assumedInnerSide}, so that the straight path cuts that wall.${single} Where it bends to another side, another wall is cut: give that side.`,
  ];
}

/** Seen along a beam no distance is longer than it is. */
function oneFilm({ course }: RemovalInput, line: Weighed["sightLine"]): string[] {
  const flat = course !== undefined && "points" in course && course.points.every((point) => point.length === 2);
  return flat && line !== undefined
    ? [
        "The course is that of one film: the straight line lies at least as far off the canal, and what it cuts along the beam is not seen.",
      ]
    : [];
}

const percentOf = (share = 0): string => `${(100 * share).toFixed(1)} %`;

function thinZone({ fragment, toothType }: RemovalInput): string[] {
  const { from, to } = kessler.thinZoneMm;
  if (toothType !== "molar" || (fragment.headDepthMm ?? 0) < from) return [];
  return [
    `In lower molars the walls were thinnest ${from} to ${to} mm below the orifice after widening: the way to the head passes there (${kessler.id}).`,
  ];
}

function heat({ alloy }: RemovalInput): string[] {
  const { nickelTitanium: niTi, steel } = madarati;
  return [
    `Heat: a rise of ${jain.riseCelsius} degrees C for more than ${jain.seconds} s may harm ligament or bone (${jain.id}); bone was harmed at ${eriksson.celsius} degrees for ${eriksson.seconds} s (${eriksson.id}, from memory).`,
    alloy === "stainlessSteel"
      ? `A dry ultrasonic tip heated a steel fragment by ${steel.after15s} degrees in 15 s and ${steel.after30s} in 30 s (${madarati.id}).`
      : `A dry ultrasonic tip heated a nickel-titanium fragment by ${niTi.after15s} degrees in 15 s and ${niTi.after30s} in 30 s; steel by ${steel.after15s} and ${steel.after30s} (${madarati.id}).`,
    `With rinsing between phases of ${pinter.seconds} s the root's surface rose by ${pinter.riseCelsius.toFixed(1)} degrees (SD ${pinter.sd}) in the hottest group (${pinter.id}); in the removal of posts by ${budd.root.rise} on average (${budd.id}). Rinse, and pause.`,
  ];
}

function beyondForamen({ fragment, courseEnds = "foramen" }: RemovalInput, courseMm: number | undefined): string[] {
  const { headDepthMm, lengthMm } = fragment;
  if (courseMm === undefined || courseEnds === "head" || headDepthMm === undefined || lengthMm === undefined) return [];
  const by = headDepthMm + lengthMm - courseMm;
  return by > roundedMm
    ? [`By these lengths the fragment reaches ${by.toFixed(1)} mm beyond the foramen: measure again.`]
    : [];
}
