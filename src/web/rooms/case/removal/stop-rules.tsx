import { useEffect, useRef, useState } from "react";
import { rulesStoodFirst } from "../../../../record/attempts-against-rules.ts";
import { Button } from "../../../parts/button.tsx";
import { momentInWords } from "../../../parts/days-in-words.ts";
import { Within } from "../../../parts/fields/editing.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { useRemovalInHand } from "./removal-in-hand.ts";

/** What ends the attempts, set before the first of them; a rule that is changed later says when. */
export function StopRules() {
  const { now, rules, readOnly } = useRemovalInHand();
  const [changing, setChanging] = useState(false);
  const first = useFirstFieldOnceSet(now.stopRules !== undefined);
  const begun = now.attempts.length > 0 || now.running !== undefined;
  const set = () => {
    rules.write({ ...now.stopRules, setAt: new Date().toISOString() }, "set now", "now");
    setChanging(true);
  };
  return (
    <section className="form-part" aria-labelledby="removal-rules">
      <h2 id="removal-rules">Stop rules</h2>
      {now.stopRules === undefined ? (
        <div className="removal-line">
          <span className="quiet">None set. They are yours, and belong before the first attempt.</span>
          {!readOnly && <Button onClick={set}>Set stop rules</Button>}
        </div>
      ) : (
        <>
          <fieldset className="edit-part" ref={first} disabled={begun && !changing}>
            <Within at="stopRules" of="the stop rules">
              <div className="fields">
                <NumberField at="minutes" label="Minutes in all, at most" unit="min" />
                <NumberField at="attempts" label="Attempts, at most" />
                <NumberField at="wallLeftMm" label="No dentine thinner than" unit="mm" digits={1} />
                <TextField at="other" label="Or when" optional wraps />
              </div>
            </Within>
          </fieldset>
          <div className="removal-line">
            <span className="quiet">{standInWords(now)}</span>
            {begun && !changing && !readOnly && (
              <Button weight="bare" onClick={set}>
                Change them now
              </Button>
            )}
          </div>
        </>
      )}
    </section>
  );
}

/** When the rules were set, and whether that was before the first attempt. */
function standInWords({ stopRules, ...now }: ReturnType<typeof useRemovalInHand>["now"]): string {
  const stoodFirst = rulesStoodFirst({ ...now, stopRules }, now.running);
  const at = stopRules === undefined ? "" : momentInWords(stopRules.setAt);
  if (stoodFirst === undefined) return "◇ No rule is written yet.";
  const begun = now.attempts.length > 0 || now.running !== undefined;
  return stoodFirst
    ? `● Set ${at}${begun ? ", before the first attempt" : ""}`
    : `◇ Set after the first attempt began: ${at}`;
}

/** Once rules are begun the press that began them is gone: the first of them is gone to, unless somebody is elsewhere. */
function useFirstFieldOnceSet(isSet: boolean) {
  const fields = useRef<HTMLFieldSetElement>(null);
  const was = useRef(isSet);
  useEffect(() => {
    if (isSet && !was.current && document.activeElement === document.body)
      fields.current?.querySelector("input")?.focus();
    was.current = isSet;
  }, [isSet]);
  return fields;
}
