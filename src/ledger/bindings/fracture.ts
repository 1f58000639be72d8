import { fractureTopic } from "../../core/instrument/fracture-topic.ts";
import type { Instrument } from "../../core/instrument/instrument-fields.ts";
import type { SizedInstrument } from "../../record/instrument-as-told.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import type { PartOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import {
  brokenInstruments,
  pieceMeasures,
  seatAtBreak,
  usesUntilBreak,
} from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";
import { instrumentThatBroke } from "../instruments-used/instrument-that-broke.ts";
import { isDriven, type RowUsed } from "../instruments-used/rows-used.ts";
import { usesAsked } from "../instruments-used/uses-asked.ts";

type Mishap = PartOf<"mishap">;

/** How each instrument that broke did so: by its uses, its canal, the piece and what was seen of it. */
export const fractureBinding: Binding = {
  topic: fractureTopic,
  ask: (context) =>
    brokenInstruments(context.parts).flatMap((mishap): (Question | Gap)[] => {
      const broke = instrumentThatBroke(mishap);
      if (broke === undefined) return [];
      if ("why" in broke) return [{ subject: `fracture of ${mishap.id}`, ...broke }];
      return [breakOf(mishap, broke.geometry, context)];
    }),
};

interface Told {
  readonly input: object;
  readonly paths: readonly InputPath[];
}
const nothing: Told = { input: {}, paths: [] };

function breakOf(mishap: Mishap, instrument: SizedInstrument, context: BindingContext): Question {
  const uses = usesUntilBreak(mishap, context.parts).filter(isDriven);
  const record = `${mishap.id}/instrument`;
  const piece = pieceMeasures(mishap, ["lengthMm", "brokenEndDiameterMm", "remainingLengthMm"], context);
  const told = [motorTold(mishap, uses), usesTold(uses, context), canalTold(mishap, context), seenTold(mishap)];
  const [motor = nothing, ...others] = told;
  return {
    subject: `fracture of ${mishap.id}`,
    input: Object.assign(
      { instrument: { ...instrumentAsked(instrument), ...motor.input }, fragment: piece.fragment },
      ...others.map(({ input }) => input),
    ),
    inputPaths: [...instrumentPaths(instrument, record), ...told.flatMap(({ paths }) => paths), ...piece.paths],
  };
}

/** Speed and torque limit: of the break as it is told, else of the last use. */
function motorTold({ id, body }: Mishap, uses: readonly RowUsed[]): Told {
  const last = uses.at(-1);
  const { rpm } = body.instrument ?? {};
  const speed = rpm === undefined ? last?.row.rpm : rpm;
  const found: [keyof Instrument, number | undefined, string][] = [
    ["rpm", speed, rpm === undefined ? `${last?.record}/rpm` : `${id}/instrument/rpm`],
    ["torqueLimitNmm", last?.row.torqueLimitNmm, `${last?.record}/torqueLimitNmm`],
  ];
  const said = found.filter(([, value]) => value !== undefined);
  return {
    input: Object.fromEntries(said.map(([field, value]) => [field, value])),
    paths: said.map(([field, , record]) => ({ input: `instrument.${field}`, record })),
  };
}

/** Uses that lack something are left out as a whole: the canal of the break then speaks alone. */
function usesTold(rows: readonly RowUsed[], context: BindingContext): Told {
  const asked = rows.length === 0 ? undefined : usesAsked(rows, context);
  return asked === undefined || "why" in asked ? nothing : { input: { uses: asked.uses }, paths: asked.paths };
}

function canalTold(mishap: Mishap, context: BindingContext): Told {
  const seat = seatAtBreak(mishap, context);
  if ("why" in seat) return nothing;
  const { course, tipDepthMm, paths } = seat;
  const fromReference = course.startsAt === "referencePoint";
  return {
    input: {
      course: { points: course.points, sigmaMm: course.sigmaMm },
      ...(fromReference ? { courseStarts: course.startsAt } : {}),
      tipDepthMm,
    },
    paths: [...paths, ...(fromReference ? [{ input: "courseStarts", record: course.lengthRecord }] : [])],
  };
}

function seenTold({ id, body }: Mishap): Told {
  const { separated } = body;
  const told = (["tipBound", "stoppedAtTorqueLimit"] as const).filter(
    (field) => separated !== undefined && separated[field] !== "notKnown",
  );
  return {
    input: {
      signs: separated?.signs ?? [],
      ...Object.fromEntries(told.map((field) => [field, separated?.[field] === "yes"])),
    },
    paths: [
      ...(separated === undefined ? [] : [{ input: "signs", record: `${id}/separated/signs` }]),
      ...told.map((field) => ({ input: field, record: `${id}/separated/${field}` })),
    ],
  };
}
