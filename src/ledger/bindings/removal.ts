import type { RemovalInput } from "../../core/instrument/removal-input.ts";
import { removalTopic } from "../../core/instrument/removal-topic.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf, thePart } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { coursesOfCanal } from "../course-of-canal-for-instrument/courses-of-canal.ts";
import { type FactTold, factsAsked, factTold } from "../fact-told.ts";
import { brokenInstruments } from "../instruments-used/broken-instrument.ts";
import { lesionBefore } from "../instruments-used/lesion-before.ts";
import { pieceInCanal } from "../instruments-used/piece-in-canal.ts";

type Removal = PartOf<"removal">;
type Mishap = PartOf<"mishap">;
type Told = FactTold<keyof RemovalInput>;

/** What a piece's removal would take and bring: by its own part, its mishap, its canal and what was known before. */
export const removalBinding: Binding = {
  topic: removalTopic,
  ask: (context) => partsOf(context.parts, "removal").map((removal) => weighedOf(removal, context)),
};

function weighedOf(removal: Removal, context: BindingContext): Question | Gap {
  const subject = `removal of ${removal.id}`;
  const mishap = brokenInstruments(context.parts).find(({ id }) => id === removal.body.mishap);
  if (mishap === undefined)
    return {
      subject,
      why: "the mishap that it is about is no separated instrument; say so in the mishap",
      inputPaths: [{ input: "fragment", record: `${removal.id}/mishap` }],
    };
  const piece = pieceInCanal(mishap, removal, context);
  const { input, inputPaths } = factsAsked([
    ...ofRemoval(removal),
    ...courseTold(mishap, removal, context),
    ...ofMishap(mishap, piece.third),
    ...toothTold(context),
    ...lesionBefore(context),
  ]);
  return {
    subject,
    input: { ...Object(input), fragment: piece.fragment },
    inputPaths: [...inputPaths, ...piece.paths],
  };
}

const measures = [
  ...(["canalDiameterMm", "walls", "thinnestAlong", "clearanceMm", "offCentreMm", "orificeShiftMm"] as const),
  ...(["innerSide", "wallsConfirmed"] as const),
] as const;

/** A list without a measured row says no more than one that was never begun. */
const said = (value: unknown): unknown => (Array.isArray(value) && value.length === 0 ? undefined : value);

/** Rows of which the thickness, and the place along the canal, were measured; one that was only begun is left out. */
const measured = ({ walls, thinnestAlong, ...body }: Removal["body"]) => ({
  ...body,
  walls: walls?.filter(({ mm }) => mm !== undefined),
  thinnestAlong: thinnestAlong?.filter(({ mm, atMm }) => mm !== undefined && atMm !== undefined),
});

function ofRemoval({ id, body }: Removal): Told[] {
  const { stopRules, attempts } = body;
  const limits = Object.entries({ wallLeftMm: stopRules?.wallLeftMm, minutes: stopRules?.minutes }).filter(
    ([, value]) => value !== undefined,
  );
  const spent = attempts.reduce((sum, { minutes }) => sum + minutes, 0);
  return [
    ...measures.flatMap((field) => factTold(field, said(measured(body)[field]), `${id}/${field}`)),
    ...(limits.length === 0 ? [] : factTold("limits" as const, Object.fromEntries(limits), `${id}/stopRules`)),
    ...factTold("minutesSpent" as const, attempts.length === 0 ? undefined : spent, `${id}/attempts`),
  ];
}

/** The first course that begins at the orifice, to the canal's end; a sum about walls has no use for another. */
function courseTold({ body: { canal, on } }: Mishap, { id, body }: Removal, context: BindingContext): Told[] {
  const courses = canal === undefined ? [] : coursesOfCanal(canal, on, context);
  const [most] = courses.flatMap(({ bend }) => bend ?? []);
  const bend = most === undefined ? [] : factTold("curvatureDeg" as const, most.deg, most.record);
  const own = courses.find(({ startsAt, reachesEnd }) => startsAt === "orifice" && reachesEnd);
  if (own === undefined) return bend;
  const paths = own.paths.map(({ input, record }): InputPath => ({ input, record }));
  return [
    { field: "course", value: { points: own.points, sigmaMm: own.sigmaMm }, paths },
    ...factTold("courseEnds" as const, body.courseEnds, `${id}/courseEnds`),
    ...bend,
  ];
}

function ofMishap({ id, body }: Mishap, thirdByFilm: Told[]): Told[] {
  const { separated, instrument } = body;
  const known = (value: string | undefined): string | undefined => (value === "notRecorded" ? undefined : value);
  const third = known(body.third);
  return [
    ...(third === undefined ? thirdByFilm : factTold("third" as const, third, `${id}/third`)),
    ...factTold("bend" as const, known(body.bend), `${id}/bend`),
    ...factTold("headSeen" as const, separated?.headSeen, `${id}/separated/headSeen`),
    ...factTold("stage" as const, known(separated?.stage), `${id}/separated/stage`),
    ...factTold("alloy" as const, instrument?.alloy, `${id}/instrument/alloy`),
    ...factTold("movement" as const, instrument?.movement, `${id}/instrument/movement`),
  ];
}

/** Of the two digits the second one counts from the middle; milk teeth have no premolars. */
function toothTold({ parts }: BindingContext): Told[] {
  const about = thePart(parts, "case");
  const [quadrant = 0, place = 0] = [...(about?.body.tooth ?? "")].map(Number);
  if (about === undefined || place === 0) return [];
  const behindCanine = quadrant > 4 ? "molar" : place < 6 ? "premolar" : "molar";
  return factTold("toothType" as const, place <= 3 ? "anterior" : behindCanine, `${about.id}/tooth`);
}
