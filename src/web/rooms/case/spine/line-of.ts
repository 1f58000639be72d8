import type { BodyOf, Part } from "../../../../record/parts.ts";
import { wayChosen } from "../../../../record/way-chosen.ts";
import { apicalWords, flagWords, pulpalWords, treatmentWords, wayWords } from "../../../../record/words/case-words.ts";
import {
  answerWords,
  mishapWords,
  onFilmWords,
  reviewByWords,
  thirdWords,
} from "../../../../record/words/later-words.ts";
import { countOf } from "../../../parts/figures-in-words.ts";

/** What a moment holds, in a few words, for its line on the spine. */
export function lineOf(part: Part): readonly string[] {
  switch (part.kind) {
    case "case":
      return [treatmentWords[part.body.treatment]];
    case "medicalHistory":
      return historyLine(part.body);
    case "findings":
      return controlsLine(part.body.teeth.filter(({ role }) => role === "control").length);
    case "diagnosis":
      return [...new Set([pulpalWords[part.body.pulpal], apicalWords[part.body.apical]])];
    case "plan":
      return planLine(part.body);
    case "consent":
      return [answerWords[part.body.answer], ...some(part.body.to)];
    case "visit":
      return visitLine(part.body);
    case "mishap":
      return [mishapWords[part.body.what], ...some(part.body.canal), ...thirdLine(part.body.third)];
    case "handback":
      return some(part.body.restoreWith);
    case "recall":
      return recallLine(part.body);
    case "review":
      return [reviewByWords[part.body.by], part.body.signed ? "signed" : "not signed"];
    default:
      return [];
  }
}

const some = (text: string | undefined): readonly string[] => (text === undefined || text === "" ? [] : [text]);

const controlsLine = (count: number): readonly string[] =>
  count === 0 ? ["no control tooth"] : [countOf(count, "control")];

function historyLine({ flags, nothingToNote }: BodyOf<"medicalHistory">): readonly string[] {
  if (flags.length === 0) return [nothingToNote ? "nothing to note" : "no flag"];
  return flags.slice(0, 2).map(({ flag }) => flagWords[flag]);
}

function planLine(plan: BodyOf<"plan">): readonly string[] {
  const chosen = wayChosen(plan);
  if (chosen === undefined) return ["nothing chosen yet"];
  const others = plan.options.filter(({ way }) => way !== chosen).length;
  return [wayWords[chosen], ...(others === 0 ? [] : [`chosen over ${countOf(others, "other")}`])];
}

const visitLine = ({ minutes, aim }: BodyOf<"visit">): readonly string[] => [
  ...(minutes === undefined ? [] : [`${minutes} min`]),
  ...some(aim),
];

const thirdLine = (third: BodyOf<"mishap">["third"]): readonly string[] =>
  third === "notRecorded" ? [] : [thirdWords[third]];

function recallLine({ retained, readings, onFilm }: BodyOf<"recall">): readonly string[] {
  if (retained === "lost") return ["tooth lost"];
  const scores = [...new Set(readings.map(({ score }) => score))];
  const read = scores.length === 0 ? [] : [`index ${scores.join(" and ")}`];
  return [...read, ...(onFilm === "notTaken" ? ["no film"] : [`lesion ${onFilmWords[onFilm]}`])].map((words) =>
    words.replace("lesion normal", "film normal").replace("lesion not comparable", "films not comparable"),
  );
}
