import vertucci from "../../../data/vertucci-1984/source.json" with { type: "json" };
import { type CanalRoot, canalsAt, cShapeAt } from "./canal-root.ts";
import type { VertucciType } from "./canal-sequence.ts";
import type { ToothFacts } from "./teeth.ts";
import { usualRoots } from "./usual-roots.ts";

/** A note where the number of roots is not a usual one for the tooth. @source common practice; docs/methods/canals, C8 */
export function rootCountNotes(tooth: ToothFacts, count: number): string[] {
  const { fewestRoots, mostRoots } = usualRoots(tooth.twoDigit);
  if (count >= fewestRoots && count <= mostRoots) return [];
  const usual = fewestRoots === mostRoots ? `${fewestRoots}` : `${fewestRoots} to ${mostRoots}`;
  return [
    `${count} ${count === 1 ? "root is" : "roots are"} unusual for the ${tooth.name}; ${usual} ${usual === "1" ? "is" : "are"} usual (common practice). Check it on a second view.`,
  ];
}

/** Whether a note is one on an unusual number of roots. Takes a note as {@link rootCountNotes} writes it. */
export const isRootCountNote = (note: string): boolean => /^\d+ roots? (is|are) unusual for the /.test(note);

/** Notes on a C-shaped root, and on levels where no lumen could be seen. @source docs/methods/canals, C6 */
export function cShapeNotes(root: CanalRoot): string[] {
  const shapes = root.levels.flatMap((level) => cShapeAt(level) ?? []);
  if (shapes.length === 0) return [];
  const notes = [
    `Root ${root.name} is C-shaped (${shapes.join(", ")} from orifice to foramen); Vertucci's types do not describe it.`,
  ];
  if (root.levels.some((level) => canalsAt(level) === 0))
    notes.push(
      `Root ${root.name} shows no lumen at a level marked C5; its foramina are counted at the last level with one.`,
    );
  return notes;
}

/**
 * A note on how often Vertucci saw this type in this root; none where his table has no such row. Rows of teeth other than
 * molars count the whole tooth, so they say nothing about one root of several.
 * @source Vertucci FJ, Root canal anatomy of the human permanent teeth, Oral Surg Oral Med Oral Pathol, 1984, 589-599 (memory); docs/methods/canals, C10
 */
export function shareNotes(
  tooth: ToothFacts,
  roots: readonly CanalRoot[],
  root: CanalRoot,
  type: VertucciType | null,
): string[] {
  const kind = tooth.name.replace(` ${tooth.side} `, " ");
  const shares: Readonly<Record<string, Readonly<Partial<Record<VertucciType, number>>>>> = vertucci.sharesPercent;
  const row = tooth.type === "molar" ? shares[`${kind} ${root.name}`] : shares[kind];
  if (row === undefined || type === null || (tooth.type !== "molar" && roots.length > 1)) return [];
  const where = tooth.type === "molar" ? `root ${root.name} of the ${kind}` : `the ${kind}`;
  const share = row[type];
  const said = share === undefined ? "not in the table for" : `${share} % of`;
  return [`Type ${type}: ${said} ${where} in one series of cleared teeth (1984, value from memory).`];
}
