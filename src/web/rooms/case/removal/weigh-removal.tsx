import { useLocation } from "wouter";
import type { PartOf } from "../../../../record/parts.ts";
import { piecesOf } from "../../../../record/pieces.ts";
import { Button } from "../../../parts/button.tsx";
import { today } from "../../../parts/days-in-words.ts";
import { newPartId } from "../../../record/new-part-id.ts";
import { useRecording } from "../../../record/use-recording.ts";
import { useCaseNow } from "../case-now.ts";
import { newBodies } from "../new-bodies.ts";
import { removalPageOf } from "./removal-pages.ts";

interface WeighRemovalOptions {
  readonly mishap: PartOf<"mishap">;
}

/** Opens the page on which a piece's removal is weighed, or begins it; nothing for a mishap that left no piece. */
export function WeighRemoval({ mishap }: WeighRemovalOptions) {
  const { caseId, parts, add } = useCaseNow();
  const record = useRecording(caseId);
  const [, go] = useLocation();
  const piece = piecesOf(parts).find((one) => one.mishap?.id === mishap.id);
  if (piece === undefined) return null;
  if (piece.removal !== undefined)
    return (
      <Button onClick={() => go(`/case/${caseId}/${removalPageOf(piece)}`)}>Open the weighing of its removal</Button>
    );
  // Whoever only looks at the case begins nothing.
  if (add === undefined) return null;
  const begin = () => {
    const id = newPartId("removal");
    const body = newBodies.removal(today(), mishap.id);
    record({
      words: "Removal weighed: begun",
      operations: [{ op: "put", id, kind: "removal", baseRevision: 0, body }],
    });
    go(`/case/${caseId}/${id}`);
  };
  return <Button onClick={begin}>Weigh its removal</Button>;
}
