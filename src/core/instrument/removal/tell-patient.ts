import type { RemovalOutput } from "../removal-output.ts";
import type { Estimate } from "./estimate.ts";

type Chance = RemovalOutput["removalChance"][number];
type Weighed = Pick<RemovalOutput, "removalChance" | "ways" | "perforation" | "sightLine" | "platform">;

/**
 * What the patient is told, in short sentences; a chance as "about n of N".
 * @source docs/methods/removal.md C16
 */
export const tellPatient = ({ removalChance, ways, perforation, ...walls }: Weighed): string[] => [
  "A small piece of a file has broken off in the root of your tooth.",
  "We can try to take it out. We can try to pass it and clean beside it. We can leave it and fill the root up to it. The tip of the root can be taken off from the side. Or the tooth can be taken out.",
  ...attemptSays(removalChance.filter(({ inSum }) => inSum)),
  `A try can make a hole in the root. That was so in ${perforationSays(perforation)}.`,
  ...wallSays(walls),
  ...ways.flatMap(({ way, healed }) => (healed === undefined ? [] : [healedSays(way, healed)])),
  "The groups in the studies were not the same. So the numbers do not tell which way is right for you.",
  "Whatever we do, come back so that we can check the tooth with a picture.",
];

function attemptSays(rows: readonly Chance[]): string[] {
  const sorted = rows.toSorted((a, b) => (a.share ?? 0) - (b.share ?? 0));
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) return [];
  const said = ({ events, n }: Chance): string => `the try worked in ${events} of ${n} teeth`;
  if (low === high) return [`In one study of teeth like yours ${said(low)}.`];
  return [`Studies differ. In one, ${said(low)}. In another, ${said(high)}.`];
}

const perforationSays = ({ from }: Weighed["perforation"]): string =>
  from
    .filter(({ says }) => says.startsWith("perforated"))
    .map(({ events, n }) => `${events} of ${n} teeth`)
    .join(" in some studies and in ")
    .concat(" in one study");

/** The counts of the studies hold no root like one whose wall would be too thin: that is said before they are. */
function wallSays({ sightLine, platform }: Pick<Weighed, "sightLine" | "platform">): string[] {
  const grades = [platform?.grade, ...(sightLine?.sides ?? []).map(({ grade }) => grade)];
  const isThin = grades.some((grade) => grade === "through" || grade === "critical");
  return isThin || sightLine?.path.verdict === "refused"
    ? ["In your tooth a straight way to the piece would leave too little of the root. The studies did not count that."]
    : [];
}

const doneSays = {
  remove: "If we try to take it out",
  bypass: "If we try to pass it",
  leave: "If we leave it",
  surgery: "If the tip of the root is taken off",
  extraction: "If the tooth is taken out",
} as const;

function healedSays(way: keyof typeof doneSays, { mean, interval }: Estimate): string {
  const of100 = (share: number): number => Math.round(100 * share);
  return `${doneSays[way]}, the bone heals in about ${of100(mean)} of 100 teeth. It could be ${of100(interval.low)} to ${of100(interval.high)}.`;
}
