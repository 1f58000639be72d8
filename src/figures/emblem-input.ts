import { type CanalRoot, type CShape, canalNames, cShapeAt } from "../core/tooth/canal-root.ts";
import type { ToothFacts } from "../core/tooth/teeth.ts";
import type { CanalState } from "./canal-state.ts";
import type { Theme } from "./theme.ts";

/** What an emblem is drawn from: the tooth, its roots as the canals topic takes them, and each canal's state by name. */
export interface EmblemTooth {
  readonly tooth: ToothFacts;
  readonly roots: readonly CanalRoot[];
  /** A canal that is not in it counts as not found. */
  readonly states: Readonly<Record<string, CanalState>>;
}

/** An emblem's tooth with the colours to draw it in. */
export interface EmblemDrawing extends EmblemTooth {
  readonly theme: Theme;
}

/** The state of a canal. */
export const stateIn = ({ states }: EmblemTooth, canal: string): CanalState =>
  (Object.hasOwn(states, canal) ? states[canal] : undefined) ?? { state: "notFound" };

/** Every canal of a tooth by name, root by root. */
export const canalsOf = ({ roots }: EmblemTooth): readonly string[] => roots.flatMap((root) => canalNames(root));

/** The root whose section is C-shaped at the orifice, and its form. */
export function cShapeOf({ roots }: EmblemTooth): { readonly root: CanalRoot; readonly form: CShape } | undefined {
  for (const root of roots) {
    const [first] = root.levels;
    const form = first === undefined ? undefined : cShapeAt(first);
    if (form !== undefined) return { root, form };
  }
  return undefined;
}
