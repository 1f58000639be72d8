import { useEditedPart } from "../../../parts/fields/editing.tsx";
import { WeighRemoval } from "../removal/weigh-removal.tsx";
import { Defence } from "./defence.tsx";
import { ExplanationSection } from "./explanation-section.tsx";
import { useMishap } from "./use-mishap.ts";

/** What is said of a separated instrument from the ledger: how it may have broken, how that is defended, and its removal. */
export function BrokenInstrument() {
  const { mishap } = useMishap("Separated instrument");
  const part = useEditedPart();
  if (mishap.what !== "separatedInstrument" || part.kind !== "mishap") return null;
  return (
    <>
      <ExplanationSection mishap={part} />
      <Defence part={part} />
      <div className="mishap-line">
        <WeighRemoval mishap={part} />
      </div>
    </>
  );
}
