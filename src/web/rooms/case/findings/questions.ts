import {
  apexWords,
  cariesWords,
  crackWords,
  earlierFillingWords,
  exposureWords,
  furtherHistoryWords,
  historyWords,
  laminaWords,
  lesionFitsWords,
  ligamentWords,
  lucencyWords,
  reproducedWords,
  resorptionWords,
  seenYesNoWords,
  sinusWords,
  swellingOnsetWords,
  swellingWords,
  yesNoWords,
} from "../../../../record/words/finding-words.ts";
import type { Question } from "./answers.tsx";

const ask = (at: string, label: string, words: Question["words"] = yesNoWords): Question => ({ at, label, words });
const { trismus, troubleSwallowing, troubleBreathing, numbLip, ...otherHistory } = furtherHistoryWords;
const { spontaneousPain, painToCold, painToHeat, relievedByCold, painOnBiting, trauma, recentOnset } = historyWords;
const { nightPain, painToSweet, painOnRelease, referredPain } = otherHistory;

/** What can't wait: asked and looked for first. */
export const urgentQuestions: readonly Question[] = [
  ask("history.troubleBreathing", troubleBreathing),
  ask("history.troubleSwallowing", troubleSwallowing),
  ask("history.trismus", trismus),
  ask("history.numbLip", numbLip),
  ask("seen.swelling", "Swelling", swellingWords),
  ask("seen.swellingOnset", "Swelling came", swellingOnsetWords),
  ask("seen.fever", "Fever"),
  ask("seen.nodes", "Lymph nodes, enlarged or tender", seenYesNoWords),
];

/** What the patient is asked about the pain. */
export const historyQuestions: readonly Question[] = [
  ask("history.spontaneousPain", spontaneousPain),
  ask("history.nightPain", nightPain),
  ask("history.painToCold", painToCold),
  ask("history.painToHeat", painToHeat),
  ask("history.painToSweet", painToSweet),
  ask("history.relievedByCold", relievedByCold),
  ask("history.painOnBiting", painOnBiting),
  ask("history.painOnRelease", painOnRelease),
  ask("history.referredPain", referredPain),
  ask("history.recentOnset", recentOnset),
  ask("history.trauma", trauma),
  ask("history.reproduced", "Brought back", reproducedWords),
];

/** What is seen on the tooth and round it. */
export const seenQuestions: readonly Question[] = [
  ask("seen.sinusTract", "Sinus tract", sinusWords),
  ask("seen.pus", "Pus", seenYesNoWords),
  ask("seen.caries", "Caries", cariesWords),
  ask("seen.exposure", "Pulp laid open", exposureWords),
  ask("seen.crack", "Crack", crackWords),
  ask("seen.post", "Post", seenYesNoWords),
  ask("seen.gag", "Gags easily"),
];

/** What the film shows. */
export const filmQuestions: readonly Question[] = [
  ask("onFilm.ligament", "Ligament space", ligamentWords),
  ask("onFilm.lamina", "Lamina dura", laminaWords),
  ask("onFilm.lucency", "Radiolucency", lucencyWords),
  ask("onFilm.lesionFits", "It fits a tooth's infection", lesionFitsWords),
  ask("onFilm.sclerosis", "Sclerosis", seenYesNoWords),
  ask("onFilm.resorption", "Resorption", resorptionWords),
  ask("onFilm.apex", "Apex", apexWords),
  ask("onFilm.calcified", "Calcified", seenYesNoWords),
  ask("onFilm.earlierFilling", "Earlier root filling", earlierFillingWords),
];
