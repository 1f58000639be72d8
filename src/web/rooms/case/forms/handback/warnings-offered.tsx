import { reentryWarnings } from "../../../../../record/reentry-warnings.ts";
import { Button } from "../../../../parts/button.tsx";
import { useField } from "../../../../parts/fields/editing.tsx";
import { useHandback } from "./use-handback.ts";
import { withLine } from "./with-line.ts";

/** Sentences that the record offers for a later re-entry; none is in the letter before it is taken. */
export function WarningsOffered() {
  const { parts, readOnly } = useHandback();
  const field = useField("warnings", "Whoever enters again must know");
  const text = typeof field.value === "string" ? field.value : "";
  const offered = reentryWarnings(parts);
  if (readOnly || offered.length === 0) return null;
  return (
    <div className="handback-offers">
      <h3>Words from the record, to take or to leave</h3>
      <ul>
        {offered.map(({ id, says }) => (
          <li key={id}>
            {text.includes(says) ? (
              <span>● Taken: {says}</span>
            ) : (
              <Button onClick={() => field.write(withLine(text, says), "words taken from the record", "now")}>
                Take: {says}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
