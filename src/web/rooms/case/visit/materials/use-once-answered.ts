import { useEffect, useState } from "react";
import type { Typed } from "./read-typed.ts";

interface Answering {
  readonly waits: boolean;
  /** The sum has said that it can't tell. */
  readonly isUnanswered?: boolean;
}

/**
 * Enter while the sum's answer is on its way is done once it is there, unless something else was typed meanwhile, or the sum could
 * not answer: that has to be read first.
 */
export function useOnceAnswered(typed: Typed, { waits, isUnanswered = false }: Answering, act: () => void) {
  const [wantedOf, want] = useState<Typed>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: done once, when the answer comes
  useEffect(() => {
    if (waits || wantedOf === undefined) return;
    want(undefined);
    if (wantedOf === typed && !isUnanswered) act();
  }, [waits, wantedOf]);
  return { isWaiting: waits && wantedOf === typed, press: () => (waits ? want(typed) : act()) };
}
