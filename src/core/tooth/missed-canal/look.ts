/** The looks and signs that speak for or against a hidden canal, from the least harm to the most. */
export const lookKinds = [
  "secondLook",
  "microscope",
  "dye",
  "bubbles",
  "lesionOnOneRoot",
  "straightFilm",
  "angledFilm",
  "offCentreInstrument",
  "cbct",
  "troughing",
] as const;
/** One of {@link lookKinds}. */
export type LookKind = (typeof lookKinds)[number];

/** What a look can come to: a look at a place sees or does not see it, a sign is there or is not. */
export const lookResults = ["seen", "notSeen", "yes", "no"] as const;
/** One of {@link lookResults}. */
export type LookResult = (typeof lookResults)[number];

/** A class of harm: 1 none, 2 a film, 3 a scan, 4 dentine. */
export type Harm = 1 | 2 | 3 | 4;

/** A kind of look as the ranking and the refusals speak of it. */
interface LookFacts {
  readonly is: string;
  readonly harm: Harm;
  /** A sign is answered yes or no, a look seen or not seen. */
  readonly sign: boolean;
  /** What to do, where it is offered as the next look. */
  readonly says: string;
}

const look = (harm: Harm, is: string, says: string): LookFacts => ({ is, harm, sign: false, says });
const sign = (harm: Harm, is: string, says: string): LookFacts => ({ is, harm, sign: true, says });

/** Each kind of look with its class of harm. @source common practice; docs/methods/missed-canal, C8 */
export const lookFacts: Readonly<Record<LookKind, LookFacts>> = {
  secondLook: look(
    1,
    "a second look at the films in hand",
    "Read the films in hand again, each root's outline and each canal to its end.",
  ),
  microscope: look(
    1,
    "the chamber's floor under the microscope",
    "Dry the chamber's floor and follow its lines under the microscope.",
  ),
  dye: look(
    1,
    "dye on the chamber's floor",
    "Stain the chamber's floor, rinse, and look for a line or a point that keeps the dye.",
  ),
  bubbles: look(
    1,
    "bubbles in hypochlorite",
    "Fill the chamber with hypochlorite and look for bubbles away from the canals that are known.",
  ),
  lesionOnOneRoot: sign(
    1,
    "a lesion round one root alone",
    "See on the films in hand whether the lesion lies round one root alone.",
  ),
  straightFilm: look(2, "a straight film", "Take one straight film if there is none that shows the root."),
  angledFilm: look(2, "an angled film", "Take one film with the tube moved aside."),
  offCentreInstrument: sign(
    2,
    "an instrument off the root's centre",
    "See on an angled film whether an instrument in the known canal lies off the root's centre.",
  ),
  cbct: look(3, "a limited-field CBCT", "Take a CBCT of the smallest field that holds the tooth."),
  troughing: look(
    4,
    "troughing under magnification",
    "Trough along the line between the orifices under magnification, to a stated depth.",
  ),
};
