import type { Part } from "../record/parts.ts";
import { isCalled, namesIn } from "./mark-notes.ts";
import { type MarkOf, marksOn } from "./marks-on.ts";

type Outline = MarkOf<"outline">;

/** One lesion as it is outlined on two films, or on one of them. */
export interface LesionPair {
  /** What a person wrote on it. */
  readonly name: string;
  readonly before?: Outline;
  readonly after?: Outline;
}

/**
 * The lesions of two films, those outlined on both first. Two outlines are of one lesion where their notes name the same
 * ("lesion at MB1" on both), or where each film has one alone and one of the notes names nothing.
 */
export function lesionPairs(parts: readonly Part[], before: string, after: string): LesionPair[] {
  const first = lesionsOn(parts, before);
  const left = lesionsOn(parts, after);
  const alone = first.length === 1 && left.length === 1;
  const pairs = first.map((outline): LesionPair => {
    const at = left.findIndex((other) => isSame(outline, other, alone));
    const [mate] = at < 0 ? [] : left.splice(at, 1);
    return { name: outline.body.what, before: outline, ...(mate === undefined ? {} : { after: mate }) };
  });
  const both = ({ before: one, after: other }: LesionPair): boolean => one !== undefined && other !== undefined;
  const lone = left.map((outline): LesionPair => ({ name: outline.body.what, after: outline }));
  return [...pairs.filter(both), ...pairs.filter((pair) => !both(pair)), ...lone];
}

const lesionsOn = (parts: readonly Part[], film: string): Outline[] =>
  marksOn(parts, film, "outline").filter(({ body }) => isCalled(body.what, "lesion"));

function isSame(one: Outline, other: Outline, alone: boolean): boolean {
  const [names, others] = [one, other].map(({ body }) => namesIn(body.what).sort().join(" "));
  return names === others || (alone && (names === "" || others === ""));
}
