import { type CanalRoot, canalNames } from "../../../../src/core/tooth/canal-root.ts";
import type { BodyOf } from "../../../../src/record/parts.ts";
import { dayAfter, workdayAfter } from "../calendar.ts";
import { type Dice, inSteps } from "./dice.ts";
import * as drawn from "./distributions.ts";
import { rootsOf } from "./roots-of.ts";

type Treatment = BodyOf<"case">["treatment"];
type Diagnosis = Pick<BodyOf<"diagnosis">, "pulpal" | "apical">;

/** The facts of one invented tooth, from which all its parts are written. */
export interface Story extends Diagnosis {
  /** 1 to 240. */
  readonly number: number;
  /** 0 at the first case of the residency, 1 at the last. */
  readonly progress: number;
  readonly presentedOn: string;
  readonly age: number;
  readonly sex: "female" | "male";
  readonly tooth: string;
  readonly molar: boolean;
  readonly upper: boolean;
  readonly treatment: Treatment;
  readonly lesionMm: number | undefined;
  readonly curved: boolean;
  readonly calcified: boolean;
  readonly roots: readonly CanalRoot[];
  readonly visitsOn: readonly string[];
  readonly canals: readonly CanalStory[];
  readonly help: NonNullable<BodyOf<"visit">["help"]>;
  readonly dice: Dice;
}

/** One canal's course through the treatment. */
export interface CanalStory {
  readonly canal: string;
  readonly workingLengthMm: number;
  readonly size: number;
  readonly fillingEndMm: number;
  readonly mishap: BodyOf<"mishap">["what"] | undefined;
}

/** The facts of a case of the logbook. Takes its number, how many there are, and its dice. */
export function storyOf(number: number, outOf: number, dice: Dice): Story {
  const progress = (number - 1) / (outOf - 1);
  const presentedOn = dayOfNumber(progress, dice);
  const treatment = later(drawn.treatments, progress, dice);
  const who = whoOf(treatment, dice);
  const place = toothOf(treatment, progress, dice);
  const diagnosis = diagnosisOf(treatment, dice);
  const curved = dice.chance((place.molar ? 0.35 : 0.12) + 0.2 * progress);
  const calcified = dice.chance(0.06 + 0.16 * progress);
  const roots = rootsOf(place.tooth, progress, dice);
  const canals = canalsOf({ ...place, roots, progress, curved, treatment, dice });
  return {
    ...{
      number,
      progress,
      presentedOn,
      treatment,
      ...who,
      ...place,
      ...diagnosis,
      curved,
      calcified,
      roots,
      canals,
      dice,
    },
    visitsOn: visitDays({ presentedOn, treatment, lesion: diagnosis.lesionMm !== undefined, dice }),
    help: helpOf(progress, dice),
  };
}

function dayOfNumber(progress: number, dice: Dice): string {
  const days = (Date.parse(drawn.span.to) - Date.parse(drawn.span.from)) / 86_400_000;
  return workdayAfter(drawn.span.from, days * progress + dice.between(0, 4));
}

/** Draws from the mixture of the start and the end that a case's place in the three years gives. */
function later<Thing>(
  { atStart, atEnd }: { atStart: readonly (readonly [Thing, number])[]; atEnd: readonly (readonly [Thing, number])[] },
  progress: number,
  dice: Dice,
): Thing {
  return dice.pick(dice.chance(progress) ? atEnd : atStart);
}

function whoOf(treatment: Treatment, dice: Dice): Pick<Story, "age" | "sex"> {
  const young = treatment === "apicalBarrier" ? 12 : 22;
  const age =
    treatment === "apicalBarrier" || treatment === "vitalPulp"
      ? dice.normal(young, 3, [9, 34])
      : dice.normal(46, 15, [16, 83]);
  return { age: Math.round(age), sex: dice.chance(0.54) ? "female" : "male" };
}

function toothOf(treatment: Treatment, progress: number, dice: Dice): Pick<Story, "tooth" | "molar" | "upper"> {
  const place =
    treatment === "apicalBarrier"
      ? dice.pick([
          ["upper1", 6],
          ["upper2", 1],
          ["lower5", 2],
        ] as const)
      : later(drawn.positions, progress, dice);
  const upper = place.startsWith("upper");
  const right = dice.chance(0.5);
  const quadrant = upper ? (right ? 1 : 2) : right ? 4 : 3;
  const position = place.at(-1) ?? "6";
  return { tooth: `${quadrant}${position}`, molar: position >= "6", upper };
}

function diagnosisOf(treatment: Treatment, dice: Dice): Diagnosis & Pick<Story, "lesionMm"> {
  if (treatment === "vitalPulp")
    return { pulpal: dice.pick(vital), apical: "normalApicalTissues", lesionMm: undefined };
  const again = treatment === "retreatment" || treatment === "surgery";
  const pulpal = again
    ? ("previouslyTreated" as const)
    : treatment === "apicalBarrier"
      ? ("pulpNecrosis" as const)
      : dice.pick(first);
  const share = drawn.lesionShare;
  const ofPulp =
    treatment === "surgery"
      ? share.surgery
      : again
        ? share.treated
        : pulpal === "pulpNecrosis"
          ? share.necrotic
          : share.vital;
  if (!dice.chance(ofPulp)) return { pulpal, apical: dice.pick(withoutLesion), lesionMm: undefined };
  return { pulpal, apical: dice.pick(withLesion), lesionMm: inSteps(dice.normal(4.2, 2, [1.5, 11]), 0.5) };
}

const vital = [
  ["reversiblePulpitis", 6],
  ["symptomaticIrreversiblePulpitis", 4],
] as const;
const first = [
  ["symptomaticIrreversiblePulpitis", 42],
  ["asymptomaticIrreversiblePulpitis", 8],
  ["pulpNecrosis", 44],
  ["previouslyInitiatedTherapy", 6],
] as const;
const withoutLesion = [
  ["normalApicalTissues", 56],
  ["symptomaticApicalPeriodontitis", 44],
] as const;
const withLesion = [
  ["asymptomaticApicalPeriodontitis", 54],
  ["symptomaticApicalPeriodontitis", 24],
  ["chronicApicalAbscess", 16],
  ["acuteApicalAbscess", 6],
] as const;

interface Drawn extends Pick<Story, "roots" | "progress" | "curved" | "treatment" | "molar" | "tooth" | "dice"> {}

function canalsOf({ roots, progress, curved, treatment, molar, tooth, dice }: Drawn): CanalStory[] {
  const share = molar
    ? drawn.mishapShare.molarAtStart + (drawn.mishapShare.molarAtEnd - drawn.mishapShare.molarAtStart) * progress
    : drawn.mishapShare.otherTooth;
  const treated = treatment !== "vitalPulp" && treatment !== "surgery";
  return roots
    .flatMap((root) => canalNames(root))
    .map((canal) => ({
      canal,
      workingLengthMm: inSteps(dice.normal(lengthOf(tooth, canal), 1.1, [15, 28]), 0.5),
      size: sizeOf(tooth, canal, dice),
      fillingEndMm: fillingEndOf(dice),
      mishap: treated && dice.chance(share * (curved ? 1.3 : 0.8)) ? dice.pick(drawn.mishaps) : undefined,
    }));
}

const lengthOf = (tooth: string, canal: string): number =>
  ({ "1": 22, "2": 21, "3": 25, "4": 20.5, "5": 21 })[tooth.at(-1) ?? ""] ?? (canal.startsWith("P") ? 20.5 : 19.5);

function sizeOf(tooth: string, canal: string, dice: Dice): number {
  const front = (tooth.at(-1) ?? "6") <= "3";
  const wide = front || /^(P|D|Single)$/.test(canal);
  return dice.pick(
    wide
      ? ([
          [35, 3],
          [40, 4],
          [45, 2],
        ] as const)
      : ([
          [25, 5],
          [30, 4],
          [35, 1],
        ] as const),
  );
}

function fillingEndOf(dice: Dice): number {
  const { beyondShare, shortShare, mean, deviation } = drawn.fillingEnd;
  if (dice.chance(beyondShare)) return -inSteps(dice.between(0.2, 1.2), 0.1);
  if (dice.chance(shortShare)) return inSteps(dice.between(2.2, 4), 0.1);
  return inSteps(dice.normal(mean, deviation, [0, 2]), 0.1);
}

interface VisitPlan extends Pick<Story, "presentedOn" | "treatment" | "dice"> {
  readonly lesion: boolean;
}

function visitDays({ presentedOn, treatment, lesion, dice }: VisitPlan): string[] {
  const firstOn = workdayAfter(presentedOn, dice.chance(0.3) ? 0 : dice.between(2, 20));
  if (treatment === "surgery" || treatment === "vitalPulp") return [firstOn];
  const more = dice.chance(lesion ? 0.8 : 0.4) ? (dice.chance(0.12) ? 2 : 1) : 0;
  const days = [firstOn];
  for (let visit = 0; visit < more; visit += 1)
    days.push(workdayAfter(dayAfter(days.at(-1) ?? firstOn, 0), dice.between(9, 30)));
  return days;
}

function helpOf(progress: number, dice: Dice): Story["help"] {
  const standing = progress + dice.normal(0, 0.16, [-0.4, 0.4]);
  if (standing < 0.22) return "assisted";
  return standing < 0.7 ? "supervised" : "alone";
}
