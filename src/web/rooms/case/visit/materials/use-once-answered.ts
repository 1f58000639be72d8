import { useEffect, useState } from "react";
import type { Typed } from "./read-typed.ts";

/** Enter while the sum's answer is on its way is done once it is there, unless something else was typed meanwhile. */
export function useOnceAnswered(typed: Typed, waits: boolean, act: () => void) {
  const [wantedOf, want] = useState<Typed>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: done once, when the answer comes
  useEffect(() => {
    if (waits || wantedOf === undefined) return;
    want(undefined);
    if (wantedOf === typed) act();
  }, [waits, wantedOf]);
  return { isWaiting: waits && wantedOf === typed, press: () => (waits ? want(typed) : act()) };
}
