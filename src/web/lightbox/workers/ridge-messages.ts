import type { LeastCostTree } from "../../../core/geometry/least-cost-tree.ts";
import type { Polarity } from "../tools/tool-step.ts";
import type { OpenedFilm } from "./pixels-messages.ts";

/** What the ridge worker is asked. */
export type RidgeQuestion =
  | { readonly ask: "open"; readonly film: OpenedFilm; readonly samples: Uint16Array }
  | { readonly ask: "ridge"; readonly polarity: Polarity }
  /** The tree near a start, or over the whole film. */
  | { readonly ask: "tree"; readonly start: number; readonly polarity: Polarity; readonly reach: "near" | "whole" };

/** What the ridge worker answers; its progress comes as news in between. */
export type RidgeAnswer =
  | { readonly is: "opened" }
  | { readonly is: "ready"; readonly polarity: Polarity; readonly milliseconds: number }
  | { readonly is: "progress"; readonly polarity: Polarity; readonly fraction: number }
  | { readonly is: "tree"; readonly tree: LeastCostTree; readonly milliseconds: number };
