import { lifeUsedTopic } from "../../core/instrument/life-used-topic.ts";
import type { SizedInstrument } from "../../record/instrument-as-told.ts";
import { instrumentsByName } from "../../record/instrument-name.ts";
import type { InputPath } from "../../record/ledger-entry.ts";
import { type PartOf, partsOf } from "../../record/parts.ts";
import type { Binding, BindingContext, Gap, Question } from "../binding.ts";
import { brokenInstruments, usesUntilBreak } from "../instruments-used/broken-instrument.ts";
import { instrumentAsked, instrumentPaths } from "../instruments-used/instrument-asked.ts";
import { instrumentThatBroke } from "../instruments-used/instrument-that-broke.ts";
import { isDriven, type RowUsed, rowsOfVisit, rowsUsed } from "../instruments-used/rows-used.ts";
import { usesAsked } from "../instruments-used/uses-asked.ts";

/**
 * The life that driven instruments have used: each geometry of a visit that no counted file stands for, taken as one
 * instrument; each counted file over the whole case; and the one that broke, until it did.
 */
export const lifeUsedBinding: Binding = {
  topic: lifeUsedTopic,
  ask: (context) => [
    ...partsOf(context.parts, "visit").flatMap((visit) => livesOfVisit(visit, context)),
    ...livesOfFiles(context),
    ...brokenInstruments(context.parts).flatMap((mishap) => lifeUntilBreak(mishap, context)),
  ],
};

function livesOfVisit(visit: PartOf<"visit">, context: BindingContext): (Question | Gap)[] {
  const used = rowsOfVisit(visit);
  return instrumentsByName(visit.body.instruments).flatMap(({ name, geometry, rows }) => {
    const own = rows.flatMap((index) => used[index] ?? []).filter((one) => isDriven(one) && one.row.file === undefined);
    const [first] = own;
    if (first === undefined) return [];
    return [lifeOf(`${visit.id} ${name}`, { geometry, record: first.record, rows: own }, context)];
  });
}

function livesOfFiles(context: BindingContext): (Question | Gap)[] {
  const byFile = new Map<string, RowUsed[]>();
  for (const used of rowsUsed(context.parts)) {
    const id = used.row.file?.id;
    if (id !== undefined && isDriven(used)) byFile.set(id, [...(byFile.get(id) ?? []), used]);
  }
  return [...byFile].flatMap(([id, rows]) => {
    const [first] = rows;
    return first === undefined
      ? []
      : [lifeOf(`file ${id}`, { geometry: first.row, record: first.record, rows }, context)];
  });
}

function lifeUntilBreak(mishap: PartOf<"mishap">, context: BindingContext): (Question | Gap)[] {
  const broke = instrumentThatBroke(mishap);
  if (broke === undefined) return [];
  const subject = `lifeUsed of ${mishap.id}`;
  if ("why" in broke) return [{ subject, ...broke }];
  const rows = usesUntilBreak(mishap, context.parts);
  if (rows.length > 0) return [lifeOf(mishap.id, { ...broke, rows }, context)];
  const why = "no use of the instrument that broke is recorded; say in the visit in which canals it was used";
  return [{ subject, why, inputPaths: instrumentPaths(broke.geometry, broke.record) }];
}

interface Life {
  readonly geometry: SizedInstrument;
  readonly record: string;
  readonly rows: readonly RowUsed[];
}

function lifeOf(about: string, { geometry, record, rows }: Life, context: BindingContext): Question | Gap {
  const subject = `lifeUsed of ${about}`;
  const asked = usesAsked(rows, context);
  const inputPaths = [...instrumentPaths(geometry, record), ...asked.paths, ...filesOf(rows)];
  if ("why" in asked) return { subject, why: asked.why, inputPaths };
  return { subject, input: { instrument: instrumentAsked(geometry), uses: asked.uses }, inputPaths };
}

/** The counted file that says that uses are those of one instrument. */
const filesOf = (rows: readonly RowUsed[]): InputPath[] =>
  rows.flatMap(({ row, record }, index) =>
    row.file === undefined ? [] : [{ input: `uses[${index}]`, record: `${record}/file` }],
  );
