import type { CabinetView } from "../../../server/api.ts";

type Shown = CabinetView["shown"][string];
/** What an instrument measures, as it was worked out. */
export type Measures = Extract<Shown, { readonly output: unknown }>["output"];

/** What an instrument measures; nothing while that is not known, or can't be said. */
export const measuresOf = (shown: Shown | undefined): Measures | undefined =>
  shown !== undefined && "output" in shown ? shown.output : undefined;
