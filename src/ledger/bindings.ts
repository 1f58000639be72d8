import type { Binding } from "./binding.ts";
import { anaestheticBinding } from "./bindings/anaesthetic.ts";
import { bendBinding } from "./bindings/bend.ts";
import { calibrateBinding } from "./bindings/calibrate.ts";
import { canalsBinding } from "./bindings/canals.ts";
import { compareFilmsBinding } from "./bindings/compare-films.ts";
import { crownRootBinding } from "./bindings/crown-root.ts";
import { curvatureBinding } from "./bindings/curvature.ts";
import { diagnosisBinding } from "./bindings/diagnosis.ts";
import { difficultyBinding } from "./bindings/difficulty.ts";
import { fillingEndBinding } from "./bindings/filling-end.ts";
import { fitBinding } from "./bindings/fit.ts";
import { fractureBinding } from "./bindings/fracture.ts";
import { fragmentOnFilmBinding } from "./bindings/fragment-on-film.ts";
import { instrumentBinding } from "./bindings/instrument.ts";
import { irrigationBinding } from "./bindings/irrigation.ts";
import { lesionBinding } from "./bindings/lesion.ts";
import { levelOnCanalBinding } from "./bindings/level-on-canal.ts";
import { lifeUsedBinding } from "./bindings/life-used.ts";
import { missedCanalBinding } from "./bindings/missed-canal.ts";
import { planBinding } from "./bindings/plan.ts";
import { removalBinding } from "./bindings/removal.ts";
import { solventBinding } from "./bindings/solvent.ts";
import { testStrengthBinding } from "./bindings/test-strength.ts";
import { toothBinding } from "./bindings/tooth.ts";
import { tubeShiftBinding } from "./bindings/tube-shift.ts";
import { twoViewBinding } from "./bindings/two-view.ts";
import { ultrasonicHeatBinding } from "./bindings/ultrasonic-heat.ts";
import { wallOnFilmBinding } from "./bindings/wall-on-film.ts";
import { workingLengthBinding } from "./bindings/working-length.ts";

/** One binding a topic, each after those whose outputs it reads. */
export const bindings: readonly Binding[] = [
  toothBinding,
  canalsBinding,
  missedCanalBinding,
  calibrateBinding,
  curvatureBinding,
  twoViewBinding,
  tubeShiftBinding,
  workingLengthBinding,
  lesionBinding,
  fillingEndBinding,
  fragmentOnFilmBinding,
  levelOnCanalBinding,
  wallOnFilmBinding,
  crownRootBinding,
  compareFilmsBinding,
  instrumentBinding,
  bendBinding,
  lifeUsedBinding,
  fitBinding,
  fractureBinding,
  removalBinding,
  diagnosisBinding,
  testStrengthBinding,
  difficultyBinding,
  planBinding,
  anaestheticBinding,
  solventBinding,
  irrigationBinding,
  ultrasonicHeatBinding,
];
