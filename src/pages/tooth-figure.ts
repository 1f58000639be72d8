import { teeth } from "../core/tooth/teeth.ts";
import { emblem } from "../figures/emblem.ts";
import type { Figure } from "../figures/svg-tree.ts";
import { canalStatesOn } from "../record/canal-states.ts";
import { thePart } from "../record/parts.ts";
import type { CaseSource } from "./case-source.ts";

/** The emblem of a case as a day left it (without one, the last); undefined until its roots are recorded. */
export function toothFigure({ parts, theme }: CaseSource, widthPx: number, day?: string): Figure | undefined {
  const about = thePart(parts, "case")?.body;
  const roots = thePart(parts, "anatomy")?.body.roots;
  const tooth = teeth.find((facts) => facts.twoDigit === about?.tooth);
  if (tooth === undefined || roots === undefined) return undefined;
  return emblem({ tooth, roots, states: canalStatesOn(parts, day), theme, widthPx });
}
