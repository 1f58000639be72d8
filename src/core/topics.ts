import { diagnosisTopic } from "./diagnosis/diagnosis-topic.ts";
import { difficultyTopic } from "./diagnosis/difficulty-topic.ts";
import { planTopic } from "./diagnosis/plan-topic.ts";
import { testStrengthTopic } from "./diagnosis/test-strength-topic.ts";
import { bendTopic } from "./instrument/bend-topic.ts";
import { fitTopic } from "./instrument/fit-topic.ts";
import { fractureTopic } from "./instrument/fracture-topic.ts";
import { instrumentTopic } from "./instrument/instrument-topic.ts";
import { lifeUsedTopic } from "./instrument/life-used-topic.ts";
import { removalTopic } from "./instrument/removal-topic.ts";
import { calibrateTopic } from "./radiograph/calibrate-topic.ts";
import { clickErrorTopic } from "./radiograph/click-error-topic.ts";
import { compareFilmsTopic } from "./radiograph/compare-films-topic.ts";
import { crownRootTopic } from "./radiograph/crown-root-topic.ts";
import { curvatureTopic } from "./radiograph/curvature-topic.ts";
import { fillingEndTopic } from "./radiograph/filling-end-topic.ts";
import { fragmentOnFilmTopic } from "./radiograph/fragment-on-film-topic.ts";
import { lesionTopic } from "./radiograph/lesion-topic.ts";
import { levelOnCanalTopic } from "./radiograph/level-on-canal-topic.ts";
import { traceTopic } from "./radiograph/trace-topic.ts";
import { tubeShiftTopic } from "./radiograph/tube-shift-topic.ts";
import { twoViewTopic } from "./radiograph/two-view-topic.ts";
import { wallOnFilmTopic } from "./radiograph/wall-on-film-topic.ts";
import { workingLengthTopic } from "./radiograph/working-length-topic.ts";
import { Refusal } from "./refusal.ts";
import { anaestheticTopic } from "./safety/anaesthetic-topic.ts";
import { irrigationTopic } from "./safety/irrigation-topic.ts";
import { solventTopic } from "./safety/solvent-topic.ts";
import { ultrasonicHeatTopic } from "./safety/ultrasonic-heat-topic.ts";
import { canalsTopic } from "./tooth/canals-topic.ts";
import { missedCanalTopic } from "./tooth/missed-canal-topic.ts";
import { toothTopic } from "./tooth/tooth-topic.ts";
import type { Topic } from "./topic.ts";

/** The only register of computations; command line, forms, method pages and tests loop over it. */
export const topics: readonly Topic[] = [
  toothTopic,
  canalsTopic,
  missedCanalTopic,
  calibrateTopic,
  workingLengthTopic,
  curvatureTopic,
  twoViewTopic,
  tubeShiftTopic,
  lesionTopic,
  fillingEndTopic,
  fragmentOnFilmTopic,
  levelOnCanalTopic,
  wallOnFilmTopic,
  crownRootTopic,
  traceTopic,
  compareFilmsTopic,
  clickErrorTopic,
  instrumentTopic,
  fitTopic,
  bendTopic,
  lifeUsedTopic,
  fractureTopic,
  removalTopic,
  solventTopic,
  anaestheticTopic,
  irrigationTopic,
  ultrasonicHeatTopic,
  diagnosisTopic,
  testStrengthTopic,
  difficultyTopic,
  planTopic,
];

/**
 * The topic of a name.
 * @throws Refusal `topic.unknown` with the names that exist.
 */
export function topicNamed(name: string): Topic {
  const found = topics.find((topic) => topic.name === name);
  if (found !== undefined) return found;
  const names = topics.map((topic) => topic.name).join(", ");
  throw new Refusal("topic.unknown", `Cannot compute ${name}: there is no topic of that name; there are ${names}`);
}
