import { fitTopic } from "../../core/instrument/fit-topic.ts";
import type { SizedInstrument } from "../../record/instrument-as-told.ts";
import { instrumentName, instrumentsByName, type NamedInstrument } from "../../record/instrument-name.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { brokenInstruments, pieceMeasures } from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";
import { instrumentThatBroke } from "../instruments-used/instrument-that-broke.ts";

type Mishap = PartOf<"mishap">;

/** Which of the instruments of a visit a piece could be from: those of its canal first. */
export const fitBinding: Binding = {
  topic: fitTopic,
  ask: (context) => brokenInstruments(context.parts).flatMap((mishap) => fitOf(mishap, context)),
};

/** The topic takes this many. */
const mostCandidates = 60;

function fitOf(mishap: Mishap, context: BindingContext): (Question | Gap)[] {
  const subject = `fit of ${mishap.id}`;
  const candidates = candidatesOf(mishap, context).slice(0, mostCandidates);
  if (candidates.length === 0) {
    // Nothing to compare: no instrument of the visit, and none that the mishap tells with its measures.
    const broke = instrumentThatBroke(mishap);
    return broke !== undefined && "why" in broke ? [{ subject, ...broke }] : [];
  }
  const { fragment, paths } = pieceMeasures(mishap, ["lengthMm", "brokenEndDiameterMm", "tipDiameterMm"], context);
  const inputPaths = [
    ...paths,
    ...candidates.flatMap(({ geometry, record }, index) =>
      instrumentPaths(geometry, record, `candidates[${index}].instrument`),
    ),
  ];
  if (fragment.brokenEndDiameterMm === undefined && fragment.tipDiameterMm === undefined)
    return [{ subject, why: "no diameter of the piece is measured; measure its broken end or its tip", inputPaths }];
  const asked = candidates.map(({ name, geometry }) => ({ name, instrument: instrumentAsked(geometry) }));
  return [{ subject, input: { fragment, candidates: asked }, inputPaths }];
}

type Candidate = Pick<NamedInstrument, "name"> & { readonly geometry: SizedInstrument; readonly record: string };

function candidatesOf(mishap: Mishap, { parts }: BindingContext): Candidate[] {
  const { id, body } = mishap;
  const visit = partsOf(parts, "visit").find((one) =>
    body.visit === undefined ? one.body.on === body.on : one.id === body.visit,
  );
  const rows = visit?.body.instruments ?? [];
  const inCanal = ({ rows: own }: NamedInstrument): boolean => own.some((index) => rows[index]?.canal === body.canal);
  const used = instrumentsByName(rows);
  const found = [...used.filter(inCanal), ...used.filter((one) => !inCanal(one))].map(
    ({ name, geometry, rows: own }) => ({
      ...{ name, geometry, record: `${visit?.id ?? id}/instruments/${own[0] ?? 0}` },
    }),
  );
  const broke = instrumentThatBroke(mishap);
  if (found.length > 0 || broke === undefined || "why" in broke) return found;
  return [{ name: instrumentName(broke.geometry), ...broke }];
}
