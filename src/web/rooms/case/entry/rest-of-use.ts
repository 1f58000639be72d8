import type { BodyOf } from "../../../../record/parts.ts";
import { sectionWords } from "../../../../record/words/cabinet-words.ts";
import { depthFromWords } from "../../../../record/words/mishap-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";

type Use = BodyOf<"visit">["instruments"][number];

/** What a row holds beside the columns of its table, a line each; nothing for what it does not say. */
export function restOfUse(row: Use): readonly string[] {
  const { reciprocation: turns, profile, engagedFraction, depthFrom, section } = row;
  const mm = (says: string, value: number | undefined) => (value === undefined ? [] : [`${says} ${value} mm`]);
  return [
    ...fileOf(row),
    ...(depthFrom === undefined ? [] : [`depth from the ${depthFromWords[depthFrom]}`]),
    ...(engagedFraction === undefined ? [] : [`at that depth for ${engagedFraction} of the time`]),
    ...(row.torqueLimitNmm === undefined ? [] : [`torque limit ${row.torqueLimitNmm} N mm`]),
    ...(turns === undefined
      ? []
      : [`${turns.forwardDeg}° forward, ${turns.backDeg}° back, ${turns.frequencyHz} times a second`]),
    ...(section === undefined ? [] : [`section: ${sectionWords[section]}`]),
    ...mm("length", row.lengthMm),
    ...mm("working part", row.workingMm),
    ...mm("stops widening at", row.maxDiameterMm),
    ...(profile === undefined ? [] : [`variable taper, ${countOf(profile.length, "station")}`]),
  ];
}

/** The counted file with what stood against it before. */
function fileOf({ file }: Use): readonly string[] {
  if (file === undefined) return [];
  const uses = file.usesBefore === undefined ? "" : `, ${countOf(file.usesBefore, "visit")} before`;
  return [`counted file ${file.label}${uses}`];
}
