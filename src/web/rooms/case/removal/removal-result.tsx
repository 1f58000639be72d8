import { useState } from "react";
import type { BodyOf, PartOf } from "../../../../record/parts.ts";
import { handledWords } from "../../../../record/words/later-words.ts";
import { removalResultWords } from "../../../../record/words/removal-words.ts";
import { Button } from "../../../parts/button.tsx";
import { ChoiceField } from "../../../parts/fields/choice-field.tsx";
import { DayField } from "../../../parts/fields/day-field.tsx";
import { useField, Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { withValueAt } from "../../../record/body-path.ts";
import type { DraftBook } from "../../../record/draft-book.ts";
import { useRecording } from "../../../record/use-recording.ts";
import { useCaseNow } from "../case-now.ts";

type Result = NonNullable<BodyOf<"removal">["result"]>["is"];
type Handled = BodyOf<"mishap">["handled"];

/** What a result means for how the mishap was handled. */
const handledBy: Readonly<Record<Result, Handled>> = {
  ...{ removed: "removed", bypassed: "bypassed", left: "left", referred: "referred" },
  ...{ surgery: "other", extraction: "other" },
};

const isResult = (name: string): name is Result => Object.hasOwn(removalResultWords, name);
const results = Object.keys(removalResultWords).filter(isResult);

interface RemovalResultOptions {
  readonly removal: PartOf<"removal">;
  readonly mishap: PartOf<"mishap"> | undefined;
  readonly day: string;
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
}

/** What came of it; the mishap is set to the same in one gesture, unless the person says no. */
export function RemovalResult({ removal, mishap, day, book }: RemovalResultOptions) {
  const field = useField("result", "Result");
  const is: unknown =
    typeof field.value === "object" && field.value !== null ? Reflect.get(field.value, "is") : undefined;
  return (
    <section className="form-part" aria-labelledby="removal-result">
      <h2 id="removal-result">Result</h2>
      {typeof is === "string" && isResult(is) ? (
        <>
          <Within at="result">
            <div className="fields">
              <ChoiceField at="is" label="What came of it" words={removalResultWords} />
              <DayField at="on" label="On" />
              <TextField at="because" label="Why it ended so" prose />
            </div>
          </Within>
          <SameForMishap {...{ is, mishap, book }} />
        </>
      ) : (
        <ResultAsked {...{ removal, mishap, day, book }} />
      )}
      <div className="fields">
        <TextField at="told" label="What was said to the patient about the ways" optional prose />
      </div>
    </section>
  );
}

function ResultAsked({ removal, mishap, day, book }: RemovalResultOptions) {
  const { caseId } = useCaseNow();
  const record = useRecording(caseId);
  const [both, setBoth] = useState(true);
  if (book === undefined) return <p className="quiet">No result recorded.</p>;
  const end = (is: Result) => {
    // What is half typed goes along in the same gesture.
    const typed = book.of(removal.id)?.body ?? removal.body;
    const sets = both && mishap !== undefined && mishap.body.handled !== handledBy[is];
    const result = { is, on: day, because: "" };
    record({
      words: `Removal weighed: result ${removalResultWords[is]}${sets ? `; mishap ${handledWords[handledBy[is]]}` : ""}`,
      operations: [
        {
          ...{ op: "put", id: removal.id, kind: "removal", baseRevision: removal.revision },
          body: withValueAt(typed, "result", result),
        },
        ...(sets ? [withHandled(mishap, handledBy[is])] : []),
      ],
    });
  };
  return (
    <fieldset className="removal-moved">
      <legend className="field-label">What came of it</legend>
      {results.map((is) => (
        <Button key={is} onClick={() => end(is)}>
          {removalResultWords[is]}
        </Button>
      ))}
      {mishap && (
        <label className="field-tick">
          <input type="checkbox" checked={both} onChange={({ target }) => setBoth(target.checked)} />
          <span>and the mishap is handled the same (now: {handledWords[mishap.body.handled]})</span>
        </label>
      )}
    </fieldset>
  );
}

const withHandled = (mishap: PartOf<"mishap">, handled: Handled) => ({
  ...{ op: "put" as const, id: mishap.id, kind: "mishap" as const, baseRevision: mishap.revision },
  body: { ...mishap.body, handled },
});

interface SameForMishapOptions extends Pick<RemovalResultOptions, "mishap" | "book"> {
  readonly is: Result;
}

/** Where the mishap says otherwise than the result, it is said and set in one press. */
function SameForMishap({ is, mishap, book }: SameForMishapOptions) {
  const { caseId } = useCaseNow();
  const record = useRecording(caseId);
  const handled = handledBy[is];
  if (mishap === undefined || mishap.body.handled === handled) return null;
  const set = () => {
    book?.commit(mishap.id);
    record({ words: `Mishap: handled ${handledWords[handled]}`, operations: [withHandled(mishap, handled)] });
  };
  return (
    <div className="removal-line">
      <span className="quiet">The mishap says: {handledWords[mishap.body.handled]}.</span>
      {book && <Button onClick={set}>Set it to {handledWords[handled]}</Button>}
    </div>
  );
}
