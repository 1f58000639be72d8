import type { Gesture } from "../../record/change.ts";
import { useAnnounce } from "../parts/announcer.tsx";
import { useRecord } from "./case-access.tsx";

/** Records a gesture and says so, or says why it could not. */
export function useRecording(caseId: string): (gesture: Gesture) => void {
  const announce = useAnnounce();
  const send = useRecord(caseId);
  return ({ words, operations }) => {
    send(words, operations).then(
      () => announce(`Saved: ${words}`),
      (error: unknown) => announce(error instanceof Error ? error.message : String(error)),
    );
  };
}
