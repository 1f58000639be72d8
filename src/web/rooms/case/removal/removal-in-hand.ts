import { removalPart } from "../../../../record/parts/removal.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { useEditedPart, useField } from "../../../parts/fields/editing.tsx";

type Removal = BodyOf<"removal">;

const { attempts: attemptsForm, running: runningForm, stopRules: rulesForm } = removalPart.body.shape;

/** The attempts, the rules and the running clock of the removal as it is being written, and how each is written. */
export function useRemovalInHand() {
  const part = useEditedPart();
  const recorded = part.kind === "removal" ? part.body : undefined;
  const attempts = useField("attempts", "Attempts");
  const running = useField("running", "Clock");
  const rules = useField("stopRules", "Stop rules");
  // What is half typed has no form yet; until it has, what is recorded stands.
  const now: Pick<Removal, "attempts" | "running" | "stopRules"> = {
    attempts: attemptsForm.safeParse(attempts.value).data ?? recorded?.attempts ?? [],
    running: running.value === undefined ? undefined : (runningForm.safeParse(running.value).data ?? recorded?.running),
    stopRules: rules.value === undefined ? undefined : (rulesForm.safeParse(rules.value).data ?? recorded?.stopRules),
  };
  return { now, attempts, running, rules, readOnly: attempts.readOnly };
}
