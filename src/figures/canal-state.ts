/** How far a canal has come. */
export type CanalState =
  /** A canal that nobody has looked for yet says so; without that it was looked for. */
  | { readonly state: "notFound"; readonly looked?: false }
  | { readonly state: "located" | "negotiated" | "shaped" | "medicated" | "filled" }
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

/** Whether nobody has looked for a canal yet: nothing is said of it, and nothing asked. */
export const isAwaited = (state: CanalState): boolean => state.state === "notFound" && state.looked === false;

/** A state in words: `filled`, `not looked for yet`, `blocked: piece of an instrument`. */
export function stateWords(state: CanalState): string {
  if (isAwaited(state)) return "not looked for yet";
  return state.state === "blocked" ? `blocked: ${state.with}` : words[state.state];
}

/** Whether a state asks to be looked at. */
export const isOpenQuestion = (state: CanalState): boolean =>
  state.state === "blocked" || (state.state === "notFound" && !isAwaited(state));
