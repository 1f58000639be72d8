import type { BodyOf } from "../../../../src/record/parts.ts";
import { workdayAfter } from "../calendar.ts";
import { recall } from "../usual-bodies.ts";
import { inSteps } from "./dice.ts";
import * as drawn from "./distributions.ts";
import type { Story } from "./story.ts";

type Recall = BodyOf<"recall">;

const daysInMonth = 30.4375;
/** A short case has eight gestures at most, three of them before the first visit. */
const mostGestures = 5;

/** The recalls of a story: those that were due, came and fall before the last day on which anybody was seen. */
export function recallsOf(story: Story): Recall[] {
  const { dice } = story;
  const done = story.visitsOn.at(-1) ?? story.presentedOn;
  const neverSeen = dice.chance(drawn.neverSeenAgain);
  const outcome = outcomeOf(story);
  const lostAfter = monthsUntilLoss(dice);
  const most = Math.min(3, mostGestures - story.visitsOn.length);
  const months = drawn.recallMonths
    .filter(([, comes]) => dice.chance(comes))
    .map(([due]) => due + dice.normal(0, 0.8, [-1.5, 2.5]));
  if (neverSeen) return [];
  const kept = months.filter((due) => due < lostAfter);
  const events = [
    ...kept.map((due) => ({ due, body: () => seenAt(story, due, outcome) })),
    ...(lostAfter < 50 ? [{ due: lostAfter, body: () => lost(story) }] : []),
  ].map(({ due, body }) => ({ on: workdayAfter(done, due * daysInMonth), body }));
  const until = events.filter(({ on }) => on <= drawn.span.seenUntil);
  return until.slice(-most).map(({ on, body }) => ({ ...body(), on }));
}

interface Outcome {
  readonly heals: boolean;
  /** Months after which a lesion that heals is gone, or a new one can be seen. */
  readonly afterMonths: number;
  /** How a lesion that does not heal looks on every later film. */
  readonly course: Seen & { readonly times: number };
}

function outcomeOf({ lesionMm, canals, treatment, dice }: Story): Outcome {
  const { healedShare, healedLess, healingMonths } = drawn;
  const share =
    (lesionMm === undefined ? healedShare.withoutLesion : healedShare.withLesion) -
    (canals.some((canal) => canal.fillingEndMm < 0) ? healedLess.fillingBeyond : 0) -
    (canals.some((canal) => canal.fillingEndMm > 2) ? healedLess.fillingShort : 0) -
    (canals.some((canal) => canal.mishap !== undefined) ? healedLess.mishap : 0) -
    (treatment === "retreatment" ? healedLess.retreatment : 0);
  const spread = Math.log(healingMonths.spreadFactor) * dice.normal(0, 1, [-2.5, 2.5]);
  return {
    heals: dice.chance(share),
    afterMonths: healingMonths.median * Math.exp(spread),
    course: dice.pick(coursesOfUnhealed),
  };
}

const coursesOfUnhealed: readonly (readonly [Outcome["course"], number])[] = [
  [{ onFilm: "same", score: 4, times: 1 }, 5],
  [{ onFilm: "larger", score: 5, times: 1.4 }, 2],
  [{ onFilm: "smaller", score: 4, times: 0.7 }, 3],
];

/** Months until a tooth is lost at an even hazard. */
const monthsUntilLoss = (dice: Story["dice"]): number =>
  (-Math.log(1 - dice.between(0, 0.999_999)) / -Math.log(1 - drawn.lostPerYear)) * 12;

function seenAt(story: Story, months: number, outcome: Outcome): Recall {
  const { dice, lesionMm } = story;
  const gone = months >= outcome.afterMonths;
  const state = lesionMm === undefined ? ofHealthy(outcome, gone, dice) : ofLesion(outcome, gone, dice);
  const hurts = !outcome.heals && dice.chance(0.3);
  const left = lesionLeft(story, months, outcome);
  return recall({
    on: story.presentedOn,
    symptoms: hurts ? "pulpalOrApical" : dice.chance(0.02) ? "other" : "none",
    percussion: hurts ? "painful" : dice.chance(0.06) ? "slight" : "none",
    sinusTract: !outcome.heals && lesionMm !== undefined && dice.chance(0.15) ? "present" : "none",
    restoration: dice.pick([
      ["sound", 90],
      ["defective", 6],
      ["temporary", 4],
    ]),
    onFilm: state.onFilm,
    readings: readingsOf(state.score, dice),
    ...(state.score >= 3 && left > 0 ? { lesionMm: left } : {}),
    nextOn: workdayAfter(story.visitsOn.at(-1) ?? story.presentedOn, (months < 10 ? 12 : months + 12) * daysInMonth),
  });
}

interface Seen {
  readonly onFilm: Recall["onFilm"];
  readonly score: number;
}

function ofHealthy({ heals }: Outcome, late: boolean, dice: Story["dice"]): Seen {
  if (heals || !late) return { onFilm: "normal", score: dice.chance(0.72) ? 1 : 2 };
  return { onFilm: "new", score: dice.chance(0.7) ? 3 : 4 };
}

function ofLesion({ heals, course }: Outcome, gone: boolean, dice: Story["dice"]): Seen {
  if (!heals) return course;
  if (gone) return { onFilm: "normal", score: dice.chance(0.55) ? 1 : 2 };
  return { onFilm: "smaller", score: dice.chance(0.65) ? 3 : 4 };
}

function lesionLeft({ lesionMm, dice }: Story, months: number, { heals, afterMonths, course }: Outcome): number {
  if (lesionMm === undefined) return inSteps(dice.between(1.5, 3), 0.5);
  return inSteps(heals ? Math.max(1, lesionMm * (1 - (0.8 * months) / afterMonths)) : lesionMm * course.times, 0.5);
}

function readingsOf(score: number, dice: Story["dice"]): Recall["readings"] {
  const own = { reader: "resident" as const, score, blind: dice.chance(0.8) };
  if (!dice.chance(0.6)) return [own];
  const other = dice.chance(drawn.readersDiffer)
    ? score + (score >= 4 || (score > 1 && dice.chance(0.5)) ? -1 : 1)
    : score;
  return [own, { reader: "supervisor", score: other, blind: true }];
}

const lost = ({ dice, presentedOn }: Story): Recall =>
  recall({
    on: presentedOn,
    retained: "lost",
    lostBecause: dice.pick(drawn.reasonsOfLoss),
    functional: "no",
    symptoms: "unknown",
    percussion: "notDone",
    palpation: "notDone",
    sinusTract: "notDone",
    swelling: "notDone",
    mobility: "notDone",
    restoration: "notRecorded",
    onFilm: "notTaken",
    imaging: "none",
  });
