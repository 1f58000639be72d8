/** How far a canal has come. */
export type CanalState =
  | { readonly state: "notFound" | "located" | "negotiated" | "shaped" | "medicated" | "filled" }
  /** Blocked with something (a piece of an instrument, a ledge, a post), at a share of the way to the foramen. */
  | { readonly state: "blocked"; readonly with: string; readonly at?: number };

/** The states in the order of treatment. */
export const canalStates = ["notFound", "located", "negotiated", "shaped", "medicated", "filled", "blocked"] as const;

const words: Readonly<Record<CanalState["state"], string>> = {
  notFound: "not found",
  located: "located",
  negotiated: "negotiated",
  shaped: "shaped",
  medicated: "medicated",
  filled: "filled",
  blocked: "blocked",
};

/** A state in words: `filled`, `blocked: piece of an instrument`. */
export const stateWords = (state: CanalState): string =>
  state.state === "blocked" ? `blocked: ${state.with}` : words[state.state];

/** Whether a state asks to be looked at. */
export const isOpenQuestion = (state: CanalState): boolean => state.state === "blocked" || state.state === "notFound";
