import type { Interval } from "../../basis.ts";
import type { DifficultyCanal, DifficultyInput } from "./difficulty-input.ts";

/** One recorded fact as the table reads it. */
export interface RecordedFact {
  readonly id: string;
  readonly canal?: string | undefined;
  /** A measure, whether it is there, or what is there. */
  readonly value: number | boolean | string;
  readonly interval?: Interval | undefined;
  readonly fromOneFilm?: boolean | undefined;
}

/** Every fact that the input holds; nothing of what it leaves out. */
export function recordedFacts(input: DifficultyInput): RecordedFact[] {
  return [
    ...recorded("mouthOpening", input.mouthOpeningMm),
    ...recorded("gag", input.gag),
    ...recorded("physicalStatus", input.physicalStatusClass),
    ...recorded("rotation", input.rotationDeg),
    ...recorded("tilt", input.tiltDeg),
    ...recorded("post", input.post),
    ...recorded("calcified", input.calcified),
    ...recorded("extraRoot", thereAs(input.extraRoot)),
    ...recorded("extraCanal", thereAs(input.extraCanal)),
    ...(input.canals ?? []).flatMap(factsOfCanal),
    ...factsOfFilling(input.earlierFilling),
    ...listed(
      "alteredCourse",
      input.alteredCourses?.map(({ is, canal }) => ({ canal, value: is })),
    ),
    ...listed(
      "fragment",
      input.fragments?.map((one) => ({ canal: one.canal, value: placeOf(one) })),
    ),
    ...recorded("openApex", input.openApex),
    ...recorded("internalResorption", has(input.resorption, "internal")),
    ...recorded("externalResorption", has(input.resorption, "external")),
    ...recorded("perforation", input.perforation),
  ];
}

const recorded = (id: string, value: RecordedFact["value"] | undefined): RecordedFact[] =>
  value === undefined ? [] : [{ id, value }];

const thereAs = (text: string | undefined): string | false | undefined => (text === "none" ? false : text);

const has = (found: DifficultyInput["resorption"], kind: string): boolean | undefined =>
  found === undefined ? undefined : found === kind || found === "both";

function factsOfCanal({ name: canal, ...known }: DifficultyCanal): RecordedFact[] {
  const { fromOneFilm } = known;
  const of = (id: string, value: number | boolean | undefined, more: Partial<RecordedFact> = {}): RecordedFact[] =>
    value === undefined ? [] : [{ id, canal, value, ...more }];
  return [
    ...of("narrowed", known.narrowed),
    ...of("deflection", known.deflectionDeg, { interval: known.deflectionInterval, fromOneFilm }),
    ...of("radius", known.radiusMm, { interval: known.radiusInterval, fromOneFilm }),
    ...of("doubleBend", known.sCurve),
    ...of("length", known.lengthMm, { interval: known.lengthInterval }),
  ];
}

/** A filling that reaches beyond the apex is not short of it, and the other way round. */
function factsOfFilling(filling: DifficultyInput["earlierFilling"]): RecordedFact[] {
  if (filling === undefined) return [];
  const { present, endMm, density, beyond } = filling;
  const isBeyond = endMm === undefined ? beyond : endMm < 0 && -endMm;
  return [
    { id: "earlierFilling", value: present },
    ...recorded("fillingShort", endMm !== undefined && endMm >= 0 ? endMm : undefined),
    ...recorded("fillingDense", density === undefined ? undefined : density === "dense"),
    ...recorded("fillingBeyond", isBeyond),
  ];
}

/** A list that is empty says that none is there. */
function listed(id: string, found: readonly Omit<RecordedFact, "id">[] | undefined): RecordedFact[] {
  if (found === undefined) return [];
  return found.length === 0 ? [{ id, value: false }] : found.map((one) => ({ id, ...one }));
}

function placeOf({ third, beyondBend }: { third?: string | undefined; beyondBend?: boolean | undefined }): string {
  const where = third === undefined ? "its third is not recorded" : `${third} third`;
  if (beyondBend === undefined) return where;
  return `${where}, ${beyondBend ? "in or beyond a bend" : "before any bend"}`;
}
