import { useEffect, useState } from "react";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { refusalInWords } from "../../../../words/value-words.ts";
import type { DoseAhead } from "./dose-ahead.ts";
import { boundWords } from "./dose-ahead.ts";
import { fractionInWords, limitMark, vasoconstrictorInWords } from "./dose-in-words.ts";
import type { Solution } from "./read-injection.ts";

interface DoseLookedAtOptions {
  readonly ahead: DoseAhead | undefined;
  readonly solution: Solution | undefined;
}

/** What the wanted injection would come to with what was given, before it is recorded; the mass is asked for where it is missing. */
export function DoseLookedAt(options: DoseLookedAtOptions) {
  const [asksMass, askMass] = useState(false);
  const isMissing = options.ahead?.why !== undefined;
  // Once asked for it stays, so that the focus is not lost to the answer that comes while it is typed.
  useEffect(() => {
    if (isMissing) askMass(true);
  }, [isMissing]);
  return (
    <>
      <Looked {...options} />
      {asksMass && (
        <div className="fields">
          <NumberField at="vitalSigns.bodyMassKg" label="Body mass" unit="kg" />
          <NumberField at="vitalSigns.ageYears" label="Age, where it is known" unit="years" />
        </div>
      )}
    </>
  );
}

function Looked({ ahead, solution }: DoseLookedAtOptions) {
  if (ahead === undefined || solution === undefined)
    return <p className="quiet">What it comes to is said here as soon as it is known how much.</p>;
  if (ahead.waits)
    return (
      <p className="quiet" role="status">
        Asking the sum what it comes to
      </p>
    );
  if (ahead.why !== undefined)
    return (
      <p className="entry-told" data-look role="status">
        <strong>▲ The limit is not looked at.</strong> {refusalInWords(ahead.why)}
      </p>
    );
  const { planned, after } = ahead;
  if (after === undefined) return null;
  return (
    <div className="entry-told" data-look={after.overLimit} role="status">
      <p>
        {planned &&
          `Whole cartridges left before it: ${planned.cartridgesLeft}, bound by ${boundWords(planned.boundBy, solution)}. `}
        <strong>
          {limitMark(after.fractionSum)} With it the agents come to {fractionInWords(after.fractionSum)}.
        </strong>
      </p>
      <ul>
        {after.vasoconstrictors.map((row) => (
          <li key={row.name}>
            {limitMark(row.fraction)} {vasoconstrictorInWords(row)}
          </li>
        ))}
        <li className="quiet">
          Limits: {after.limitSet.says}. Mass: {after.dosingMass.kg} kg, {after.dosingMass.says}.
        </li>
        {after.questions.length > 0 && (
          <li>◇ Asked on the page behind, with no answer of no: {after.questions.map(questionOf).join(" ")}</li>
        )}
      </ul>
    </div>
  );
}

const questionOf = ({ asks }: { readonly asks: string }): string => `${asks.split("?")[0]}?`;
